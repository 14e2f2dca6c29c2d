package org.ohmloom.workbench.findings;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.manual.WrittenPages;
import org.ohmloom.review.Cautions;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Results;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.widget.FilterField;
import org.ohmloom.workbench.widget.FocusFrame;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.ListWithFoot;
import org.ohmloom.workbench.widget.PaneTitle;
import org.ohmloom.workbench.widget.SeverityIcon;
import org.ohmloom.workbench.widget.WrapLayout;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** What is wrong, grouped by severity; selecting a finding shows what it is about everywhere else. */
public final class FindingsPane extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final DefaultListModel<FindingsModel.Row> rows = new DefaultListModel<>();
    private final JList<FindingsModel.Row> list = new JList<>(rows);
    private final transient Map<Severity, JToggleButton> filters = new EnumMap<>(Severity.class);
    private final JLabel nothing = new JLabel();
    private final JPanel middle = new JPanel(new CardLayout());
    private final transient Words words = Words.of("findings");
    private final JTextField filter = new FilterField(10, words.get("filter"), words.get("filter"), this::showFindings);
    private final JComboBox<String> grouping = new JComboBox<>();
    private transient ShownUnits written = ShownUnits.USUAL;
    private boolean quiet;

    /**
     * The pane.
     *
     * @param cures commands that do something about the selected finding, from left to right
     */
    public FindingsPane(Desk desk, Command... cures) {
        super(new MigLayout("insets 0, fill, gap 0, wrap 1"));
        HelpPage.ask(list, () -> desk.selection().finding().map(finding -> WrittenPages.ofRule(finding.rule())));
        this.desk = desk;
        list.setName("findings");
        list.getAccessibleContext().setAccessibleName(words.get("findings.findings"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new FindingRenderer(desk::units));
        list.addListSelectionListener(event -> {
            if (!quiet && !event.getValueIsAdjusting()) {
                chosen().ifPresent(finding -> desk.select(Selection.of(finding)));
            }
        });
        add(head(List.of(cures)), "growx, wmin 0, hmin pref");
        add(filterBar(), "growx, wmin 0, hmin pref");
        add(middle(), "grow, push");
        desk.listen(this::hear);
        showFindings();
    }

    /** The list of findings. */
    public JList<FindingsModel.Row> findings() {
        return list;
    }

    /** Selects the next finding, or with -1 the previous one, around the ends. */
    void step(int by) {
        int count = rows.size();
        int index = list.getSelectedIndex();
        for (int k = 0; k < count; k++) {
            index = Math.floorMod(index < 0 && by < 0 ? count - 1 : index + by, count);
            if (!rows.get(index).isHeading()) {
                list.setSelectedIndex(index);
                list.ensureIndexIsVisible(index);
                return;
            }
        }
    }

    private Component head(List<Command> cures) {
        JPanel head = new JPanel();
        WrapLayout.on(head, 4);
        head.add(PaneTitle.of(words.get("findings.findings")));
        for (Severity severity : Severity.values()) {
            JToggleButton filter = new JToggleButton("0", new SeverityIcon(severity), true);
            filter.setName("filter-" + severity);
            filter.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
            filter.setToolTipText(
                    words.get("findings.show", FindingsModel.plural(severity).toLowerCase(Locale.ROOT)));
            filter.addActionListener(event -> showFindings());
            filters.put(severity, filter);
            head.add(filter);
        }
        for (Command cure : cures) {
            JButton curing = new JButton(cure);
            curing.setName(cure.id().equals("apply-fix") ? "fix" : cure.id());
            head.add(curing);
        }
        return head;
    }

    private Component filterBar() {
        JPanel bar = new JPanel(new MigLayout("insets 0 4 4 8, fillx", "[grow,fill][]"));
        filter.setName("findings-filter");
        filter.setToolTipText(words.get("filter.about"));
        for (String key : List.of("group-severity", "group-rule", "group-thing")) {
            grouping.addItem(words.get(key));
        }
        grouping.setName("findings-grouping");
        grouping.getAccessibleContext().setAccessibleName(words.get("group"));
        grouping.addActionListener(event -> showFindings());
        bar.add(filter, "wmin 60");
        bar.add(grouping);
        return bar;
    }

    /** Offers further commands over the list: by the right button of the mouse, or the key for menus. */
    public void offer(List<Command> commands) {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("findings-menu");
        commands.forEach(menu::add);
        list.setComponentPopupMenu(menu);
    }

    private Component middle() {
        list.setFixedCellWidth(-1);
        JScrollPane scroll = new JScrollPane(
                new ListWithFoot(list, cautions()),
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        FocusFrame.around(scroll, list, "Ohmloom.line");
        scroll.getViewport().addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                // A changed fixed height makes the list ask every cell for its height again.
                list.setFixedCellHeight(1);
                list.setFixedCellHeight(-1);
            }
        });
        nothing.setHorizontalAlignment(JLabel.CENTER);
        nothing.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        middle.add(scroll, "list");
        middle.add(nothing, "nothing");
        return middle;
    }

    private static JComponent cautions() {
        WrappedText line = WrappedText.of(Words.said(Cautions.paragraph()), "Ohmloom.soft", -1);
        line.setBorder(BorderFactory.createEmptyBorder(5, 10, 5, 10));
        return line;
    }

    private void hear(Topic topic) {
        switch (topic) {
            case DOCUMENT, RESULTS -> showFindings();
            case VIEW -> {
                // Of the view only the units are in the sentences.
                if (!desk.units().equals(written)) {
                    showFindings();
                }
            }
            case SELECTION -> showSelection();
            case HARNESS, MESSAGE -> {}
        }
    }

    private void showFindings() {
        written = desk.units();
        List<Results.Standing> findings = desk.findings();
        Set<Severity> shown = EnumSet.noneOf(Severity.class);
        filters.forEach((severity, button) -> {
            long count = findings.stream()
                    .filter(each -> each.finding().severity() == severity)
                    .count();
            button.setText(String.valueOf(count));
            button.getAccessibleContext().setAccessibleName(FindingsModel.plural(severity) + ": " + count);
            if (button.isSelected()) {
                shown.add(severity);
            }
        });
        List<FindingsModel.Row> wanted = FindingsModel.rows(
                findings,
                shown,
                filter.getText(),
                FindingsModel.Grouping.values()[Math.max(0, grouping.getSelectedIndex())]);
        quiet = true;
        try {
            rows.clear();
            rows.addAll(wanted);
        } finally {
            quiet = false;
        }
        showSelection();
        boolean empty = wanted.isEmpty();
        nothing.setText(
                desk.analysis().isEmpty()
                        ? ""
                        : !findings.isEmpty()
                                ? words.get("findings.all-are-filtered-out")
                                : desk.isWhole()
                                        ? words.get("findings.nothing-to-complain-about")
                                        : words.get("findings.none-so-far"));
        ((CardLayout) middle.getLayout()).show(middle, empty ? "nothing" : "list");
    }

    private void showSelection() {
        Optional<Finding> wanted = desk.selection().finding();
        int index = -1;
        for (int k = 0; k < rows.size(); k++) {
            Optional<Finding> here = rows.get(k).finding();
            if (wanted.isPresent() && here.isPresent() && Fixes.isSame(here.get(), wanted.get())) {
                index = k;
            }
        }
        quiet = true;
        try {
            if (index < 0) {
                list.clearSelection();
            } else {
                list.setSelectedIndex(index);
                list.ensureIndexIsVisible(index);
            }
        } finally {
            quiet = false;
        }
    }

    private Optional<Finding> chosen() {
        return Optional.ofNullable(list.getSelectedValue()).flatMap(FindingsModel.Row::finding);
    }
}
