package org.ohmloom.workbench.lists;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JSplitPane;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.sheet.Adding;
import org.ohmloom.workbench.sheet.ColumnMenu;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.sheet.SheetPane;
import org.ohmloom.workbench.sheet.SheetTable;
import org.ohmloom.workbench.widget.CardPages;
import org.ohmloom.workbench.widget.FilterField;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.HintLine;
import org.ohmloom.workbench.widget.PaneTitle;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.SharedSplit;
import org.ohmloom.workbench.widget.WrapLayout;
import org.ohmloom.workbench.words.Words;

/** All lists, chosen by name at the side, with a filter above and, below, a line that says what a cell takes or what is wrong. */
public final class ListsPane extends JPanel {

    private static final long serialVersionUID = 1L;

    /** Share of the width that the names of the lists get at first. */
    private static final double NAMES_SHARE = 0.17;

    private final transient Desk desk;
    private final CardPages pages = new CardPages("list-pages");
    private final ListChooser chooser = new ListChooser(pages);
    private final JTextField filter = new FilterField(
            14,
            Words.of("lists").get("lists.filter-rows"),
            Words.of("lists").get("lists.filter-rows.about"),
            this::applyFilter);
    private final JLabel title = PaneTitle.of("");
    private final HintLine hint = new HintLine("list-hint", hintText());
    private final transient List<SheetPane<?>> panes = new ArrayList<>();
    private final List<SheetTable> elsewhere = new ArrayList<>();
    private final transient Words words = Words.of("lists");
    private final JButton addButton = new JButton(words.get("add"));
    private final JButton columnsButton = new JButton(words.get("columns"));
    private boolean choosing;
    private transient @Nullable Document shown;

    public ListsPane(Desk desk, Samples samples, PreferenceStore preferences) {
        super(new MigLayout("insets 0, fill, gap 0, wrap 1"));
        this.desk = desk;
        sheets(desk).forEach((key, sheet) -> {
            SheetPane<?> pane = HelpPage.name(pane(sheet, samples), "lists/" + key);
            pane.keepColumns(key, preferences);
            panes.add(pane);
        });
        panes.forEach(pages::addPage);
        pages.onChange(() -> {
            inOrder(List.of(currentPane()));
            applyFilter();
        });
        JPanel shown = new JPanel(new MigLayout("insets 0, fill, gap 0, wrap 1", "[grow,fill]", "[][grow,fill]"));
        shown.add(filterBar(), "growx, wmin 0");
        shown.add(pages, "grow, push, hmin 60");
        add(
                new SharedSplit("list-names", JSplitPane.HORIZONTAL_SPLIT, chooser, shown, NAMES_SHARE).firstWhole(),
                "grow, push, hmin 80");
        add(hint, "growx, gap 10 10 4 4, wmin 0");
        desk.listen(this::hear);
        showRows();
    }

    /** All lists by a key that stays, in the order of their tabs. */
    public static Map<String, Sheet<?>> sheets(Desk desk) {
        ThingLists things = new ThingLists(desk::harness);
        Map<String, Sheet<?>> sheets = new LinkedHashMap<>();
        sheets.put("wires", things.wires());
        sheets.put("loads", things.loads());
        sheets.put("connectors", things.connectors());
        sheets.put("cavities", new CavitySheet(desk::harness));
        sheets.put("components", things.components());
        sheets.put("junctions", things.junctions());
        sheets.put("states", things.states());
        sheets.put("sequences", new SequenceSheet());
        sheets.put("groups", new GroupSheet());
        sheets.put("sources", new SourceSheet());
        sheets.put("alternators", new AlternatorSheet());
        sheets.put("outputs", new OutputSheet());
        sheets.put("sensors", new SensorSheet());
        sheets.put("inputs", new InputSheet());
        sheets.put("parts", things.parts());
        sheets.put("contacts", things.contacts());
        sheets.put("design", new DesignSheet());
        sheets.put("workshop", new WorkshopSheet());
        sheets.putAll(things.others());
        return sheets;
    }

    /** Finishes an open cell, here or in a list elsewhere, or shows the one that cannot be; whether none is open any more. */
    public boolean commit() {
        Optional<SheetPane<?>> open =
                panes.stream().filter(pane -> !pane.table().commit()).findFirst();
        open.ifPresent(pages::bring);
        return open.isEmpty() && elsewhere.stream().allMatch(SheetTable::commit);
    }

    /** Lists elsewhere whose open cells are finished with those here. */
    public void commitToo(List<SheetTable> tables) {
        elsewhere.addAll(tables);
    }

    /** The list in front. */
    public SheetTable front() {
        return currentPane().table();
    }

    /** What the list in front holds. */
    String frontTitle() {
        return currentPane().sheet().title();
    }

    /** Ids to rename: of the selected rows when there are several, otherwise of all that are shown. */
    List<String> toRename() {
        List<String> chosen = currentPane().chosenIds();
        return chosen.size() > 1 ? chosen : currentPane().shownIds();
    }

    /** Adds the one thing the list in front can take, or shows what it can. */
    void showAdds() {
        List<Adding> adds = currentPane().sheet().adds();
        if (adds.size() == 1) {
            add(adds.get(0));
        } else if (!adds.isEmpty()) {
            JPopupMenu menu = new JPopupMenu();
            menu.setName("adds");
            adds.forEach(adding -> {
                JMenuItem item = new JMenuItem(adding.words());
                item.setName("add-" + adding.words());
                item.addActionListener(event -> add(adding));
                menu.add(item);
            });
            menu.show(addButton, 0, addButton.getHeight());
        }
    }

    /** Adds something and selects it, so that it can be typed over. */
    void add(Adding adding) {
        if (commit()) {
            try {
                Adding.Made made = adding.make().apply(desk.harness().orElseThrow());
                desk.apply(made.edit());
                desk.select(Selection.of(made.ids().subList(0, 1)));
                if (!currentPane().typeOver(made.ids().get(0))) {
                    // The filter keeps it out of sight.
                    filter.setText("");
                    currentPane().typeOver(made.ids().get(0));
                }
            } catch (IllegalArgumentException missing) {
                hint.say(Words.said(missing));
            }
        }
    }

    /** Shows which columns the list in front has. */
    void showColumns() {
        ColumnMenu.open(front(), columnsButton);
    }

    /** Brings the list of a title to the front. */
    void showList(String title) {
        panes.stream()
                .filter(pane -> pane.sheet().title().equals(title))
                .findFirst()
                .ifPresent(pages::bring);
    }

    /** The list in front with what can be added to it. */
    Sheet<?> frontSheet() {
        return currentPane().sheet();
    }

    /** The field that filters the list in front. */
    public JTextField filterField() {
        return filter;
    }

    private <R> SheetPane<R> pane(Sheet<R> sheet, Samples samples) {
        return new SheetPane<>(sheet, desk, samples, hint::say, this::choose);
    }

    private JPanel filterBar() {
        JPanel bar = new JPanel();
        WrapLayout.on(bar, 4);
        bar.setOpaque(false);
        bar.add(title);
        filter.setName("list-filter");
        for (JButton button : List.of(addButton, columnsButton)) {
            button.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
            bar.add(button);
        }
        addButton.setName("list-add");
        addButton.setToolTipText(words.get("add.about"));
        addButton.addActionListener(event -> showAdds());
        columnsButton.setName("list-columns");
        columnsButton.setToolTipText(words.get("columns.about"));
        columnsButton.addActionListener(event -> showColumns());
        bar.add(filter);
        return bar;
    }

    private void applyFilter() {
        front().filter(filter.getText());
        title.setText(currentPane().sheet().title());
        addButton.setEnabled(!currentPane().sheet().adds().isEmpty());
    }

    private void choose(List<String> ids) {
        choosing = true;
        try {
            desk.select(Selection.of(ids));
        } finally {
            choosing = false;
        }
    }

    private void hear(Topic topic) {
        switch (topic) {
            case DOCUMENT -> {
                if (desk.document().orElse(null) != shown) {
                    shown = desk.document().orElse(null);
                    inOrder(panes);
                }
                showRows();
            }
            case HARNESS, RESULTS, VIEW -> showRows();
            case SELECTION -> showSelection();
            case MESSAGE -> {}
        }
    }

    /** Puts rows that stayed where they were under other identities into their order. */
    private void inOrder(List<SheetPane<?>> some) {
        some.stream().filter(pane -> !pane.table().isEditing()).forEach(pane -> {
            pane.show(Optional.empty());
            pane.show(Readout.of(desk));
            pane.select(desk.selection().ids());
        });
    }

    private void showRows() {
        Optional<Readout> readout = Readout.of(desk);
        panes.forEach(pane -> pane.show(readout));
        chooser.show(
                panes.stream().map(pane -> pane.sheet().title()).toList(),
                panes.stream()
                        .map(pane -> pane.table().getModel().getRowCount())
                        .toList());
        title.setText(currentPane().sheet().title());
    }

    private void showSelection() {
        if (choosing) {
            return;
        }
        Selection selection = desk.selection();
        boolean inFront = selection.ids().stream().anyMatch(currentPane()::has);
        if (!inFront) {
            selection.ids().stream()
                    .flatMap(id -> panes.stream().filter(pane -> pane.has(id)))
                    .findFirst()
                    .ifPresent(pane -> {
                        if (commit()) {
                            pages.bring(pane);
                        }
                    });
        }
        panes.forEach(pane -> pane.select(selection.ids()));
    }

    private SheetPane<?> currentPane() {
        return (SheetPane<?>) pages.front();
    }

    private static String hintText() {
        return Words.of("lists").get("lists.double-click-or-type");
    }
}
