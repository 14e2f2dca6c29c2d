package org.ohmloom.workbench.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.table.AbstractTableModel;
import org.ohmloom.draw.Mark;
import org.ohmloom.edit.Edit;

/**
 * A sheet as a table model. Rows keep their places while only their numbers change, so that selection and an open cell
 * editor stay where they are.
 *
 * @param <R> type of the rows
 */
public final class SheetModel<R> extends AbstractTableModel {

    private static final long serialVersionUID = 1L;

    private final transient Sheet<R> sheet;
    private final transient List<Column<R>> columns;
    private final transient Consumer<Edit> edits;
    private transient List<R> rows = List.of();
    private transient List<String> ids = List.of();
    private transient Map<String, Integer> places = Map.of();
    private boolean current = true;

    /**
     * A model.
     *
     * @param edits takes the edits a person makes in cells
     */
    public SheetModel(Sheet<R> sheet, Consumer<Edit> edits) {
        this.sheet = sheet;
        this.columns = List.copyOf(sheet.columns());
        this.edits = edits;
    }

    /** Shows other rows; those of before when the ids are the same. */
    public void show(List<R> changed, boolean upToDate) {
        List<String> before = ids;
        rows = List.copyOf(changed);
        ids = rows.stream().map(sheet::key).toList();
        places = new HashMap<>();
        for (int k = 0; k < ids.size(); k++) {
            places.putIfAbsent(ids.get(k), k);
        }
        current = upToDate;
        if (ids.equals(before)) {
            if (!rows.isEmpty()) {
                fireTableRowsUpdated(0, rows.size() - 1);
            }
        } else {
            fireTableDataChanged();
        }
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
        return columns.get(column).edit().orElseThrow().start(rows.get(row));
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
        CellEdit<R> edit = columns.get(column)
                .edit()
                .orElseThrow(
                        () -> new IllegalArgumentException(columns.get(column).title() + " cannot be edited here"));
        List<R> suited = chosen.stream().map(rows::get).filter(edit::suits).toList();
        if (suited.isEmpty()) {
            throw new IllegalArgumentException(columns.get(column).title() + " cannot be edited in these rows");
        }
        return edit.parse(suited, typed);
    }

    /** Puts a text into cells of a column as one step. */
    public void type(List<Integer> chosen, int column, String typed) {
        edits.accept(parse(chosen, column, typed));
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
        return columns.get(column).head();
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return CellText.class;
    }

    @Override
    public CellText getValueAt(int row, int column) {
        return columns.get(column).cell().apply(rows.get(row));
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
