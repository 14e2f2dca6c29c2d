package org.ohmloom.workbench.sheet;

import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.table.AbstractTableModel;
import org.ohmloom.draw.Mark;
import org.ohmloom.edit.Edit;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.words.Words;

/**
 * A sheet as a table model. Rows keep their places while only their numbers change, so that selection and an open cell
 * editor stay where they are.
 *
 * @param <R> type of the rows
 */
public final class SheetModel<R> extends AbstractTableModel {
    private static final Words WORDS = Words.of("sheets");

    private static final long serialVersionUID = 1L;

    private final transient Sheet<R> sheet;
    private final transient List<Column<R>> columns;
    private final transient Consumer<Edit> edits;
    private final transient Supplier<ShownUnits> units;
    private transient List<R> rows = List.of();
    private transient List<String> ids = List.of();
    private transient Map<String, Integer> places = Map.of();
    private boolean current = true;
    private transient ShownUnits writtenIn = ShownUnits.USUAL;
    /** Cells as they were written for these rows in these units: painting, sorting and filtering ask for them again and again. */
    private transient Map<Integer, CellText> written = new HashMap<>();

    /**
     * A model.
     *
     * @param edits takes the edits a person makes in cells
     */
    public SheetModel(Sheet<R> sheet, Consumer<Edit> edits) {
        this(sheet, edits, () -> ShownUnits.USUAL);
    }

    /**
     * A model in the units a person reads.
     *
     * @param edits takes the edits a person makes in cells
     * @param units the units, asked for whenever something is shown or typed
     */
    public SheetModel(Sheet<R> sheet, Consumer<Edit> edits, Supplier<ShownUnits> units) {
        this.sheet = sheet;
        this.columns = List.copyOf(sheet.columns());
        this.edits = edits;
        this.units = units;
    }

    /** Shows other rows; those of before when the ids are the same. */
    public void show(List<R> changed, boolean upToDate) {
        List<String> before = ids;
        rows = inPlace(changed);
        ids = rows.stream().map(sheet::key).toList();
        places = new HashMap<>();
        for (int k = 0; k < ids.size(); k++) {
            places.putIfAbsent(ids.get(k), k);
        }
        current = upToDate;
        written.clear();
        if (ids.equals(before)) {
            if (!rows.isEmpty()) {
                fireTableRowsUpdated(0, rows.size() - 1);
            }
        } else {
            fireTableDataChanged();
        }
    }

    /**
     * While none comes and none goes every row stays where it is, whatever its identity has become: what is typed next is meant for
     * the row that is seen there.
     */
    private List<R> inPlace(List<R> changed) {
        Map<String, R> left = new LinkedHashMap<>();
        changed.forEach(row -> left.put(sheet.key(row), row));
        if (changed.size() != ids.size() || left.size() != ids.size()) {
            return List.copyOf(changed);
        }
        List<Optional<R>> same =
                ids.stream().map(id -> Optional.ofNullable(left.remove(id))).toList();
        Iterator<R> renamed = left.values().iterator();
        return same.stream().map(row -> row.orElseGet(renamed::next)).toList();
    }

    /** Whether the numbers are those of the harness as it is. */
    boolean isCurrent() {
        return current;
    }

    public Column<R> column(int index) {
        return columns.get(index);
    }

    String id(int row) {
        return ids.get(row);
    }

    /** Ids of the elements that are selected with a row. */
    List<String> about(int row) {
        return sheet.about(rows.get(row));
    }

    /** The small drawing before the text of a cell. */
    Optional<Mark> sample(int row, int column) {
        return columns.get(column).sample().apply(rows.get(row));
    }

    /** Place of the row about an element; -1 when there is none. */
    public int rowOf(String id) {
        return places.getOrDefault(id, -1);
    }

    /** The text editing of a cell starts from. */
    String start(int row, int column) {
        return shown(row, column).start(raw(row, column));
    }

    private String raw(int row, int column) {
        return columns.get(column).edit().orElseThrow().start(rows.get(row));
    }

    /** A column in the units shown, for the text of a row. */
    private ShownColumn shown(int row, int column) {
        Column<R> of = columns.get(column);
        return new ShownColumn(of, of.holds().apply(rows.get(row)), units.get());
    }

    /** Puts what stands in the cell of a row into cells of the same column, as one step, digit for digit. */
    void fill(int from, List<Integer> chosen, int column) {
        edits.accept(
                isCellEditable(from, column)
                        ? edit(chosen, column, raw(from, column))
                        : parse(chosen, column, text(from, column)));
    }

    /** What stands in a cell, as it is typed where it can be, otherwise as it is copied. */
    String text(int row, int column) {
        return isCellEditable(row, column)
                ? start(row, column)
                : getValueAt(row, column).exact();
    }

    /**
     * The edit that puts a text into cells of a column.
     *
     * @throws IllegalArgumentException when the text is not what the column needs; the message says what would be right
     */
    Edit parse(List<Integer> chosen, int column, String typed) {
        return edit(
                chosen,
                column,
                chosen.isEmpty() ? typed : shown(chosen.get(0), column).typed(typed));
    }

    private Edit edit(List<Integer> chosen, int column, String text) {
        CellEdit<R> edit = columns.get(column)
                .edit()
                .orElseThrow(() -> new IllegalArgumentException(WORDS.get(
                        "sheet.cannot-be-edited-here", columns.get(column).title())));
        List<R> suited = chosen.stream().map(rows::get).filter(edit::suits).toList();
        if (suited.isEmpty()) {
            throw new IllegalArgumentException(
                    WORDS.get("sheet.cannot-be-edited-in", columns.get(column).title()));
        }
        return edit.parse(suited, text);
    }

    /** Puts a text into cells of a column as one step; cells whose own text was left as it is keep what they hold. */
    public void type(List<Integer> chosen, int column, String typed) {
        List<Integer> others = chosen.stream()
                .filter(row ->
                        !isCellEditable(row, column) || !start(row, column).equals(typed))
                .toList();
        if (!others.isEmpty() || chosen.isEmpty()) {
            edits.accept(parse(others, column, typed));
        }
    }

    /** Applies an edit made of several. */
    void apply(Edit edit) {
        edits.accept(edit);
    }

    @Override
    public int getRowCount() {
        return rows.size();
    }

    @Override
    public int getColumnCount() {
        return columns.size();
    }

    @Override
    public String getColumnName(int column) {
        return new ShownColumn(columns.get(column), Column.Holds.AS_IT_IS, units.get()).head();
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return CellText.class;
    }

    @Override
    public CellText getValueAt(int row, int column) {
        if (!units.get().equals(writtenIn)) {
            writtenIn = units.get();
            written.clear();
        }
        return written.computeIfAbsent(row * columns.size() + column, place -> shown(row, column)
                .cell(columns.get(column).cell().apply(rows.get(row))));
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return columns.get(column)
                .edit()
                .filter(edit -> edit.suits(rows.get(row)))
                .isPresent();
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        type(List.of(row), column, String.valueOf(value));
    }
}
