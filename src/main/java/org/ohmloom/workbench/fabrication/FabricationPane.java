package org.ohmloom.workbench.fabrication;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.model.Harness;
import org.ohmloom.model.RoutingRule;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireId;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.sheet.SheetPane;
import org.ohmloom.workbench.sheet.SheetTable;
import org.ohmloom.workbench.study.StudyTab;
import org.ohmloom.workbench.study.TabName;
import org.ohmloom.workbench.widget.HintLine;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.WrapLayout;
import org.ohmloom.workbench.words.Words;

/** How the harness is made: where wires may lie, what they get at their ends, figures, coverings, splices that stay. */
public final class FabricationPane extends StudyTab {
    private static final Words WORDS = Words.of("fabrication");

    private static final long serialVersionUID = 1L;

    /** Key of the tab. */
    public static final String KEY = "fabrication";

    private final transient Desk desk;
    private final JTabbedPane tabs = new JTabbedPane();
    private final HintLine hint = new HintLine("fabrication-hint", hintText());
    private final SheetPane<?> routing;
    private final transient List<SheetPane<?>> lists;
    private final JButton add = new JButton(WORDS.get("fabrication.new-rule"));
    private final JButton remove = new JButton(WORDS.get("fabrication.remove-rule"));

    public FabricationPane(Desk desk, Samples samples) {
        super(new MigLayout("insets 0, fill, gap 0, wrap 1"), TabName.of(KEY));
        this.desk = desk;
        this.lists = sheets().stream()
                .<SheetPane<?>>map(sheet -> list(sheet, samples))
                .toList();
        this.routing = lists.get(0);
        lists.forEach(each -> tabs.addTab(each.sheet().title(), each));
        tabs.setName("fabrication-lists");
        tabs.getAccessibleContext().setAccessibleName(WORDS.get("fabrication.how-the-harness-is"));
        tabs.setTabLayoutPolicy(JTabbedPane.WRAP_TAB_LAYOUT);
        tabs.addChangeListener(event -> refreshButtons());
        routing.table().getSelectionModel().addListSelectionListener(event -> refreshButtons());
        add(tabs, "grow, push, hmin 60");
        add(buttons(), "growx, wmin 0");
        add(hint, "growx, gap 10 10 4 4, wmin 0");
        refreshButtons();
    }

    /** What is listed, in the order of the tabs. */
    public static List<Sheet<?>> sheets() {
        return List.of(
                new RoutingSheet(),
                new SegmentSheet(),
                new AllowanceSheet(),
                new FabricationSheet(),
                new SpliceSheet());
    }

    private <R> SheetPane<R> list(Sheet<R> sheet, Samples samples) {
        SheetPane<R> pane = new SheetPane<>(sheet, desk, samples, hint::say, ids -> desk.select(Selection.of(ids)));
        pane.table().setName("fabrication-" + sheet.title());
        return pane;
    }

    private JComponent buttons() {
        JPanel bar = new JPanel();
        WrapLayout.on(bar, 4);
        bar.setOpaque(false);
        add.setName("new-routing-rule");
        add.setToolTipText(WORDS.get("fabrication.a-rule-for-the"));
        add.addActionListener(event -> menu().show(add, 0, add.getHeight()));
        remove.setName("remove-routing-rule");
        remove.addActionListener(event -> removeChosen());
        bar.add(add);
        bar.add(remove);
        return bar;
    }

    private JPopupMenu menu() {
        JPopupMenu menu = new JPopupMenu();
        item(menu, WORDS.get("fabrication.out-of-a-zone"), rule -> desk.harness()
                .flatMap(harness -> harness.zones().ids().stream().findFirst())
                .map(zone ->
                        (RoutingRule) new RoutingRule.AvoidZone(zone, rule.wires(), rule.classes(), Optional.empty())));
        item(menu, WORDS.get("fabrication.apart-from-other-signals"), rule -> {
            SignalClass from = rule.classes().contains(SignalClass.FEED) ? SignalClass.DATA_BUS : SignalClass.FEED;
            return Optional.of(new RoutingRule.Apart(List.of(from), rule.wires(), rule.classes(), Optional.empty()));
        });
        item(menu, WORDS.get("fabrication.through-a-breakout"), rule -> desk.harness()
                .flatMap(harness -> harness.breakouts().ids().stream().findFirst())
                .map(breakout -> (RoutingRule)
                        new RoutingRule.Through(breakout, rule.wires(), rule.classes(), Optional.empty())));
        return menu;
    }

    /** Whom a new rule is asked of. */
    private record Asked(List<WireId> wires, List<SignalClass> classes) {}

    /** Makes a rule for wires; empty where the harness has nothing it could name. */
    private interface Maker {
        Optional<RoutingRule> of(Asked asked);
    }

    private void item(JPopupMenu menu, String text, Maker maker) {
        JMenuItem item = new JMenuItem(text);
        Optional<RoutingRule> rule = maker.of(asked());
        item.setEnabled(rule.isPresent());
        item.addActionListener(event -> rule.ifPresent(this::addRule));
        menu.add(item);
    }

    private Asked asked() {
        List<WireId> wires = desk.harness().stream()
                .flatMap(harness -> harness.wires().ids().stream())
                .filter(id -> desk.selection().ids().contains(id.value()))
                .toList();
        return new Asked(wires, wires.isEmpty() ? List.of(SignalClass.DATA_BUS) : List.of());
    }

    private void addRule(RoutingRule rule) {
        desk.harness().ifPresent(harness -> {
            desk.apply(RoutingEdits.add(harness, rule));
            tabs.setSelectedComponent(routing);
            int last = routing.table().getRowCount() - 1;
            if (last >= 0) {
                routing.table().setRowSelectionInterval(last, last);
                routing.table().requestFocusInWindow();
            }
        });
    }

    private void removeChosen() {
        List<Integer> places = IntStream.of(routing.table().getSelectedRows())
                .map(routing.table()::convertRowIndexToModel)
                .boxed()
                .toList();
        Optional<Harness> harness = desk.harness();
        if (!places.isEmpty() && harness.isPresent() && routing.table().commit()) {
            desk.apply(RoutingEdits.remove(harness.get(), places));
        }
    }

    private void refreshButtons() {
        boolean here = tabs.getSelectedComponent() == routing;
        add.setVisible(here);
        remove.setVisible(here);
        remove.setEnabled(routing.table().getSelectedRowCount() > 0);
        boolean empty = here && desk.harness().isPresent() && routing.table().getRowCount() == 0;
        hint.tell(empty ? WORDS.get("fabrication.no-rule-yet") : "");
    }

    /** The list of that place: routing rules, segments, connectors, figures, splices. */
    SheetTable table(int place) {
        return lists.get(place).table();
    }

    /** All lists. */
    public List<SheetTable> tables() {
        return lists.stream().map(SheetPane::table).toList();
    }

    /** Brings a list to the front. */
    void showList(int place) {
        tabs.setSelectedIndex(place);
    }

    @Override
    public JComponent front() {
        return lists.get(Math.max(0, tabs.getSelectedIndex())).table();
    }

    @Override
    public void showRows() {
        Optional<Readout> readout = Readout.of(desk);
        lists.forEach(list -> {
            list.show(readout);
            int rows = list.table().getModel().getRowCount();
            boolean counted = !(list.sheet() instanceof FabricationSheet);
            tabs.setTitleAt(lists.indexOf(list), list.sheet().title() + (rows == 0 || !counted ? "" : "  " + rows));
        });
        refreshButtons();
    }

    @Override
    public void showSelection() {
        lists.stream()
                .filter(list -> list.sheet() instanceof ElementSheet<?>)
                .filter(list -> desk.selection().ids().stream().anyMatch(list::has))
                .forEach(list -> list.select(desk.selection().ids()));
    }

    private static String hintText() {
        return WORDS.get("fabrication.double-click-or-type");
    }
}
