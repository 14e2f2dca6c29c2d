package org.ohmloom.workbench.whatif;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.RowSorter;
import javax.swing.SortOrder;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.compare.Compared;
import org.ohmloom.workbench.compare.ComparedHead;
import org.ohmloom.workbench.compare.ComparedTabs;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.sheet.SheetTable;
import org.ohmloom.workbench.study.StudyTab;
import org.ohmloom.workbench.study.TabName;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.words.Words;

/** What the side copy changes against its original: numbers by the size of their change, findings, parts, elements. */
public final class WhatIfPane extends StudyTab {

    private static final long serialVersionUID = 1L;

    /** Key of the tab. */
    public static final String KEY = "what-if";

    private final transient WhatIf whatIf;
    private final transient Words words = Words.of("what-if");
    private final ComparedHead head;
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
        head = new ComparedHead(KEY, commands);
        add(head, "growx");
        add(tabs, "grow, push, hmin 60");
        whatIf.listen(() -> {
            if (isShowing()) {
                showRows();
            }
        });
        showRows();
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
        return head.said();
    }

    @Override
    public JComponent front() {
        return tabs.front();
    }

    @Override
    public void showRows() {
        tabs.refresh();
        head.say(WhatIfText.of(whatIf, words));
    }

    @Override
    public void showSelection() {}
}
