package org.ohmloom.workbench.whatif;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.RowSorter;
import javax.swing.SortOrder;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.CommandButton;
import org.ohmloom.workbench.compare.Compared;
import org.ohmloom.workbench.compare.ComparedTabs;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.sheet.SheetTable;
import org.ohmloom.workbench.study.StudyTab;
import org.ohmloom.workbench.study.TabName;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.WrapLayout;
import org.ohmloom.workbench.widget.WrappedLabel;
import org.ohmloom.workbench.words.Words;

/** What the side copy changes against its original: numbers by the size of their change, findings, parts, elements. */
public final class WhatIfPane extends StudyTab {

    private static final long serialVersionUID = 1L;

    /** Key of the tab. */
    public static final String KEY = "what-if";

    private final transient WhatIf whatIf;
    private final transient Words words = Words.of("what-if");
    private final WrappedLabel summary = new WrappedLabel(" ");
    private final ComparedTabs tabs;

    /**
     * A pane.
     *
     * @param commands begin, keep and drop
     */
    public WhatIfPane(Desk desk, WhatIf whatIf, Samples samples, List<Command> commands) {
        super(new MigLayout("insets 0, fill, gap 0, wrap 1"), TabName.of(KEY));
        this.whatIf = whatIf;
        this.tabs = new ComparedTabs(desk, samples, KEY, whatIf::shown);
        SheetTable numbers = tabs.table(ComparedTabs.NUMBERS);
        int size = numbers.getModel().getColumnCount() - 1;
        numbers.getRowSorter().setSortKeys(List.of(new RowSorter.SortKey(size, SortOrder.DESCENDING)));
        tabs.setSelectedIndex(ComparedTabs.NUMBERS);
        add(head(commands), "growx");
        add(tabs, "grow, push, hmin 60");
        whatIf.listen(() -> {
            if (isShowing()) {
                showRows();
            }
        });
        showRows();
    }

    private JComponent head(List<Command> commands) {
        JPanel buttons = new JPanel();
        WrapLayout.on(buttons, 6);
        for (Command command : commands) {
            JButton button = CommandButton.of(command);
            button.setName(KEY + "-" + command.id());
            buttons.add(button);
        }
        summary.setName(KEY + "-summary");
        summary.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        JPanel head = new JPanel(new MigLayout("insets 2 4 4 8, fillx, wrap 1, gap 0"));
        head.add(buttons, "growx, wmin 0");
        head.add(summary, "growx, wmin 0, gapleft 6");
        return head;
    }

    /** The list of that place: elements, parts, numbers, findings. */
    SheetTable table(int place) {
        return tabs.table(place);
    }

    /** Whether what it shows is still being worked out. */
    public boolean isBusy() {
        return whatIf.isBusy() || !whatIf.isCurrent();
    }

    Optional<Compared> shown() {
        return whatIf.shown();
    }

    /** What is said above the lists. */
    String summaryText() {
        return summary.said();
    }

    @Override
    public JComponent front() {
        return tabs.front();
    }

    @Override
    public void showRows() {
        tabs.refresh();
        summary.say(WhatIfText.of(whatIf, words));
        summary.setToolTipText(summary.said());
    }

    @Override
    public void showSelection() {}
}
