package org.ohmloom.workbench.sheet;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Rectangle;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.widget.FocusFrame;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.words.Words;

/**
 * One list in its pane.
 *
 * @param <R> type of its rows
 */
public final class SheetPane<R> extends JPanel {
    private static final Words WORDS = Words.of("sheets");

    private static final long serialVersionUID = 1L;

    private final transient Sheet<R> sheet;
    private final SheetModel<R> model;
    private final SheetTable table;
    private boolean quiet;

    /**
     * A pane.
     *
     * @param chosen takes the ids of the rows a person selects
     */
    public SheetPane(
            Sheet<R> sheet, Desk desk, Samples samples, Consumer<String> problem, Consumer<List<String>> chosen) {
        super(new MigLayout("insets 0, fill, gap 0"));
        this.sheet = sheet;
        this.model = new SheetModel<>(sheet, desk::apply, desk::units);
        this.table = new SheetTable(model, samples, problem);
        table.setName("list-" + sheet.title());
        table.getAccessibleContext().setAccessibleName(sheet.title());
        table.getTableHeader().getAccessibleContext().setAccessibleName(WORDS.get("sheet.columns-of", sheet.title()));
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!quiet && !event.getValueIsAdjusting() && table.getSelectedRowCount() > 0) {
                chosen.accept(chosenIds());
            }
        });
        JScrollPane scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        FocusFrame.around(scroll, table);
        scroll.putClientProperty(FlatClientProperties.SCROLL_PANE_SMOOTH_SCROLLING, Boolean.TRUE);
        add(scroll, "grow, push");
    }

    public Sheet<R> sheet() {
        return sheet;
    }

    public SheetTable table() {
        return table;
    }

    /** Shows the rows of a harness; none when there is none. */
    public void show(Optional<Readout> readout) {
        quietly(() -> {
            List<String> before = selectedIds();
            List<Integer> places = table.selectedModelRows();
            int count = model.getRowCount();
            int column = table.focusColumn();
            table.nameHeads();
            model.show(
                    readout.map(sheet::rows).orElse(List.of()),
                    readout.isEmpty() || readout.get().isCurrent());
            if (!selectedIds().equals(before)) {
                boolean renamed =
                        model.getRowCount() == count && before.stream().anyMatch(id -> model.rowOf(id) < 0);
                selectRows(shown(renamed ? places.stream().map(model::id).toList() : before));
            }
            table.focusColumn(column);
        });
    }

    /** Whether it has a row about an element. */
    public boolean has(String id) {
        return model.rowOf(id) >= 0;
    }

    /** Selects the rows about elements; others are left unselected. */
    public void select(List<String> ids) {
        quietly(() -> {
            List<Integer> rows = shown(ids);
            if (!table.isEditing()) {
                selectRows(rows);
            }
            if (!rows.isEmpty()) {
                Rectangle visible = table.getVisibleRect();
                Rectangle cell = table.getCellRect(rows.get(0), 0, true);
                table.scrollRectToVisible(new Rectangle(visible.x, cell.y, 1, cell.height));
            }
        });
    }

    /** Puts the focus on the first cell of a row that can be typed over; whether the row is shown. */
    public boolean typeOver(String id) {
        List<Integer> rows = shown(List.of(id));
        rows.forEach(row -> {
            int column = IntStream.range(0, table.getColumnCount())
                    .filter(each -> table.isCellEditable(row, each))
                    .findFirst()
                    .orElse(0);
            table.changeSelection(row, column, false, false);
            table.requestFocusInWindow();
        });
        return !rows.isEmpty();
    }

    /**
     * Keeps which columns are shown from one start to the next.
     *
     * @param list what the list is kept under, whatever the language
     */
    public void keepColumns(String list, PreferenceStore preferences) {
        Map<String, String> kept = preferences.now().columns();
        table.shown()
                .keep(
                        // lists were kept by their titles before they had keys
                        Optional.ofNullable(kept.getOrDefault(list, kept.get(sheet.title()))),
                        text -> preferences.change(now -> now.withColumns(list, text)));
        ColumnMenu.on(table);
    }

    /** Ids of the elements the selected rows are about, in the order shown. */
    public List<String> chosenIds() {
        return about(IntStream.of(table.getSelectedRows()));
    }

    /** Ids of the elements all rows are about that are shown, in the order shown. */
    public List<String> shownIds() {
        return about(IntStream.range(0, table.getRowCount()));
    }

    private void selectRows(List<Integer> shown) {
        table.clearSelection();
        shown.forEach(row -> table.addRowSelectionInterval(row, row));
    }

    /** The rows about elements, as shown. */
    private List<Integer> shown(List<String> ids) {
        return ids.stream()
                .map(model::rowOf)
                .filter(row -> row >= 0)
                .map(table::convertRowIndexToView)
                .filter(row -> row >= 0)
                .toList();
    }

    private List<String> about(IntStream shown) {
        return shown.map(table::convertRowIndexToModel)
                .boxed()
                .flatMap(row -> model.about(row).stream())
                .distinct()
                .toList();
    }

    private List<String> selectedIds() {
        return IntStream.of(table.getSelectedRows())
                .map(table::convertRowIndexToModel)
                .mapToObj(model::id)
                .toList();
    }

    private void quietly(Runnable task) {
        quiet = true;
        try {
            task.run();
        } finally {
            quiet = false;
        }
    }
}
