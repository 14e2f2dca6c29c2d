package org.ohmloom.workbench.states;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.table.AbstractTableModel;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetInStates;
import org.ohmloom.edit.StateSubject;
import org.ohmloom.model.Component;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.workbench.sheet.CellChanges;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** What the states set: a row for each source, load, switch and output, a column for each state shown. */
final class MatrixModel extends AbstractTableModel {

    private static final long serialVersionUID = 1L;

    /** Columns before those of the states: identity, name and kind. */
    static final int FIRST = 3;

    private final transient Words words;
    private final transient Consumer<Edit> edits;
    private transient Optional<Harness> harness = Optional.empty();
    private transient List<StateSubject> subjects = List.of();
    private transient List<OperatingState> states = List.of();

    MatrixModel(Words words, Consumer<Edit> edits) {
        this.words = words;
        this.edits = edits;
    }

    /**
     * Shows states of a harness.
     *
     * @param shown       the states, from left to right
     * @param onlyDiffers whether rows in which they do not differ are left out
     */
    void show(Optional<Harness> now, List<OperatingState> shown, boolean onlyDiffers) {
        List<String> before = heads();
        List<StateSubject> rows = subjects;
        harness = now;
        states = List.copyOf(shown);
        subjects = now.map(StateSubject::all).orElse(List.of()).stream()
                .filter(subject -> !onlyDiffers || differs(subject))
                .toList();
        if (!before.equals(heads())) {
            fireTableStructureChanged();
        } else if (rows.equals(subjects)) {
            if (!rows.isEmpty()) {
                fireTableRowsUpdated(0, rows.size() - 1);
            }
        } else {
            fireTableDataChanged();
        }
    }

    private List<String> heads() {
        List<String> heads = new ArrayList<>();
        states.forEach(state -> heads.add(state.id() + " " + state.name()));
        return heads;
    }

    List<OperatingState> states() {
        return states;
    }

    StateSubject subject(int row) {
        return subjects.get(row);
    }

    /** Whether the states shown do not all say the same of something. */
    boolean differs(StateSubject subject) {
        return states.stream().map(subject::written).distinct().count() > 1;
    }

    private Component component(StateSubject subject) {
        String id = subject.text().split("\\.", 2)[0];
        return (Component) harness.orElseThrow().element(id).orElseThrow();
    }

    private SetInStates.Cell cell(int row, int column) {
        return new SetInStates.Cell(
                subjects.get(row), states.get(column - FIRST).id());
    }

    /**
     * The edit that puts a text into cells, given as row and column.
     *
     * @throws IllegalArgumentException when it does not fit one of them
     */
    Edit parse(List<int[]> places, String typed) {
        List<SetInStates.Cell> cells = places.stream()
                .filter(place -> place[1] >= FIRST)
                .map(place -> cell(place[0], place[1]))
                .toList();
        return SetInStates.of(harness.orElseThrow(), cells, typed);
    }

    void type(List<int[]> places, String typed) {
        edits.accept(parse(places, typed));
    }

    void apply(Edit edit) {
        edits.accept(edit);
    }

    /** What a text would change in a cell; empty when nothing. */
    Optional<CellChanges.Cell> change(int row, int column, String text) {
        String before = String.valueOf(getValueAt(row, column));
        String head = getColumnName(column);
        String name = row < subjects.size() ? subjects.get(row).text() : "";
        return text.strip().equals(before)
                ? Optional.empty()
                : Optional.of(CellChanges.Cell.of(
                        name, head, before, text, () -> parse(List.of(new int[] {row, column}), text)));
    }

    @Override
    public int getRowCount() {
        // the table asks while this object is still being made
        return subjects == null ? 0 : subjects.size();
    }

    @Override
    public int getColumnCount() {
        return FIRST + (states == null ? 0 : states.size());
    }

    @Override
    public String getColumnName(int column) {
        return switch (column) {
            case 0 -> words.get("what");
            case 1 -> words.get("name");
            case 2 -> words.get("kind");
            default -> states.get(column - FIRST).name();
        };
    }

    @Override
    public Object getValueAt(int row, int column) {
        StateSubject subject = subjects.get(row);
        return switch (column) {
            case 0 -> subject.text();
            case 1 -> component(subject).name();
            case 2 -> subject instanceof StateSubject.Output
                    ? words.get("output")
                    : TradeWords.kind(component(subject).device());
            default -> subject.written(states.get(column - FIRST));
        };
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return column >= FIRST;
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        type(List.of(new int[] {row, column}), String.valueOf(value));
    }
}
