package org.ohmloom.workbench.compare;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;
import org.ohmloom.analysis.revision.RevisionComparison;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.sheet.SheetPane;
import org.ohmloom.workbench.sheet.SheetTable;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.words.Words;

/** The lists of a comparison behind tabs: elements, parts, numbers, findings. Choosing a line selects what it is about. */
public final class ComparedTabs extends JTabbedPane {
    private static final Words WORDS = Words.of("revision");

    private static final long serialVersionUID = 1L;

    /** Place of the list of numbers. */
    public static final int NUMBERS = 2;

    private final transient Desk desk;
    private final transient List<SheetPane<?>> lists;

    /**
     * The lists.
     *
     * @param name  begins the names of its parts
     * @param shown what they show
     */
    public ComparedTabs(Desk desk, Samples samples, String name, Supplier<Optional<Compared>> shown) {
        this.desk = desk;
        Supplier<Optional<RevisionComparison>> comparison = () -> shown.get().map(Compared::comparison);
        this.lists = List.of(
                list(name, ComparedLists.elements(comparison), samples),
                list(
                        name,
                        ComparedLists.parts(
                                () -> shown.get().map(Compared::parts).orElse(List.of())),
                        samples),
                list(name, ComparedLists.results(comparison), samples),
                list(name, ComparedLists.findings(comparison), samples));
        lists.forEach(list -> addTab(list.sheet().title(), list));
        setName(name + "-lists");
        getAccessibleContext().setAccessibleName(WORDS.get("compared-tabs.what-differs"));
    }

    private <R> SheetPane<R> list(String name, Sheet<R> sheet, Samples samples) {
        SheetPane<R> pane = new SheetPane<>(sheet, desk, samples, desk::say, this::choose);
        pane.table().setName(name + "-" + sheet.title());
        return pane;
    }

    private void choose(List<String> ids) {
        List<String> there = desk.harness().stream()
                .flatMap(
                        harness -> ids.stream().filter(id -> harness.element(id).isPresent()))
                .toList();
        if (!there.isEmpty()) {
            desk.select(Selection.of(there).centred());
        }
    }

    /** The list of that place: elements, parts, numbers, findings. */
    public SheetTable table(int place) {
        return lists.get(place).table();
    }

    /** The list in front. */
    public JComponent front() {
        return lists.get(Math.max(0, getSelectedIndex())).table();
    }

    /** Shows what there is now, its count on each tab. */
    public void refresh() {
        Optional<Readout> readout = Readout.of(desk);
        for (int place = 0; place < lists.size(); place++) {
            SheetPane<?> list = lists.get(place);
            list.show(readout);
            int rows = list.table().getModel().getRowCount();
            setTitleAt(place, list.sheet().title() + (rows == 0 ? "" : "  " + rows));
        }
    }
}
