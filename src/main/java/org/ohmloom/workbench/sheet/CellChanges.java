package org.ohmloom.workbench.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.RenameElements;
import org.ohmloom.workbench.words.Words;

/**
 * What would change in the cells of a list, cell by cell, to be looked at before it does.
 *
 * @param what  what is done, as the menu shows it: "Paste"
 * @param cells the cells that would change and those that cannot
 */
public record CellChanges(String what, List<Cell> cells) {

    /**
     * One cell.
     *
     * @param row     what the row is about
     * @param column  title of the column
     * @param before  what stands there, as it is typed
     * @param after   what would stand there
     * @param problem why it cannot; empty when it can
     * @param edit    the edit that puts it there
     */
    public record Cell(String row, String column, String before, String after, String problem, Optional<Edit> edit) {

        /** A cell with what is parsed for it, or with why that cannot be. */
        public static Cell of(String row, String column, String before, String after, Supplier<Edit> parse) {
            try {
                return new Cell(row, column, before, after, "", Optional.of(parse.get()));
            } catch (IllegalArgumentException unfit) {
                return refused(row, column, before, after, Words.said(unfit));
            }
        }

        /** A cell that cannot change. */
        public static Cell refused(String row, String column, String before, String after, String problem) {
            return new Cell(row, column, before, after, problem, Optional.empty());
        }
    }

    public CellChanges {
        cells = List.copyOf(cells);
    }

    /** Cells that cannot change. */
    List<Cell> refused() {
        return cells.stream().filter(cell -> cell.edit().isEmpty()).toList();
    }

    /** Cells that can change. */
    List<Cell> fitting() {
        return cells.stream().filter(cell -> cell.edit().isPresent()).toList();
    }

    /** The edit of all cells that can change, as one step; empty when none can. */
    public Optional<Edit> edit() {
        List<Edit> edits = new ArrayList<>();
        cells.forEach(cell -> cell.edit().ifPresent(edits::add));
        // an edit names what it changes by the identity of now, so identities change last
        edits.sort(Comparator.comparing(edit -> edit instanceof RenameElements));
        return edits.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        edits.size() == 1
                                ? edits.get(0)
                                : new Compound(Words.of("sheets").text("cells-changed", what, edits.size()), edits));
    }

    /** Puts a text into cells of a list, told by row and column of the model; those that hold it already are left out. */
    static CellChanges of(String what, SheetModel<?> model, List<int[]> places, List<String> texts) {
        List<Cell> cells = new ArrayList<>();
        for (int k = 0; k < places.size(); k++) {
            cell(model, places.get(k)[0], places.get(k)[1], texts.get(k)).ifPresent(cells::add);
        }
        return new CellChanges(what, cells);
    }

    static Optional<Cell> cell(SheetModel<?> model, int row, int column, String text) {
        String title = model.column(column).title();
        String before = model.text(row, column);
        boolean same =
                text.equals(before) || text.equals(model.getValueAt(row, column).exact());
        return same
                ? Optional.empty()
                : Optional.of(
                        Cell.of(model.id(row), title, before, text, () -> model.parse(List.of(row), column, text)));
    }
}
