package org.ohmloom.workbench.sheet;

import java.util.Optional;
import java.util.function.Function;
import org.ohmloom.draw.Mark;
import org.ohmloom.workbench.words.Term;

/**
 * A column of a list.
 *
 * @param term    what it holds
 * @param unit    unit of its numbers; empty for texts
 * @param tip     what it holds, in a sentence
 * @param numeric whether it holds numbers
 * @param letters usual width, in letters
 * @param cell    the cell of a row
 * @param edit    how it is edited; empty when it is not
 * @param sample  a small drawing before the text, where there is one
 * @param detail  whether it is only shown when a person chooses it
 * @param holds   what the text of a row is, for the units a person reads
 * @param <R>     type of the rows
 */
public record Column<R>(
        Term term,
        String unit,
        String tip,
        boolean numeric,
        int letters,
        Function<R, CellText> cell,
        Optional<CellEdit<R>> edit,
        Function<R, Optional<Mark>> sample,
        boolean detail,
        Function<R, Holds> holds) {

    /** What the texts of a column are. */
    public enum Holds {
        /** Texts of a person, identities, and numbers in the unit of the column. */
        AS_IT_IS,
        /** Texts of the program with quantities in them; typed as they are shown but for the decimal sign. */
        QUANTITIES,
        /** Conductor sizes. */
        SIZES
    }

    public Column(
            Term term, String unit, String tip, int letters, Function<R, CellText> cell, Optional<CellEdit<R>> edit) {
        this(
                term,
                unit,
                tip,
                !unit.isEmpty(),
                letters,
                cell,
                edit,
                row -> Optional.empty(),
                false,
                row -> Holds.AS_IT_IS);
    }

    /** A column of texts. */
    public static <R> Column<R> text(Term term, String tip, int letters, Function<R, String> cell) {
        return new Column<>(term, "", tip, letters, row -> CellText.of(cell.apply(row)), Optional.empty());
    }

    /** A column of numbers in a unit, or of counts. */
    public static <R> Column<R> number(Term term, String unit, String tip, Function<R, CellText> cell) {
        int letters = Math.max(8, term.text().length() + unit.length() + 2);
        return new Column<>(
                term,
                unit,
                tip,
                true,
                letters,
                cell,
                Optional.empty(),
                row -> Optional.empty(),
                false,
                row -> Holds.AS_IT_IS);
    }

    /** What tells it from the others of its list, whatever the language. */
    public String key() {
        return term.key();
    }

    /** What it holds, in the language of the display. */
    public String title() {
        return term.text();
    }

    public Column<R> edited(CellEdit<R> how) {
        return new Column<>(term, unit, tip, numeric, letters, cell, Optional.of(how), sample, detail, holds);
    }

    public Column<R> wide(int changed) {
        return new Column<>(term, unit, tip, numeric, changed, cell, edit, sample, detail, holds);
    }

    public Column<R> with(Function<R, Optional<Mark>> drawing) {
        return new Column<>(term, unit, tip, numeric, letters, cell, edit, drawing, detail, holds);
    }

    /** This column, only shown when a person chooses it. */
    public Column<R> chosenOnly() {
        return new Column<>(term, unit, tip, numeric, letters, cell, edit, sample, true, holds);
    }

    /** This column, its texts written by the program with quantities in them. */
    public Column<R> quantities() {
        return holding(row -> Holds.QUANTITIES);
    }

    /** This column, its texts conductor sizes. */
    public Column<R> sizes() {
        return holding(row -> Holds.SIZES);
    }

    /** This column, its texts of another kind from row to row. */
    public Column<R> holding(Function<R, Holds> changed) {
        return new Column<>(term, unit, tip, numeric, letters, cell, edit, sample, detail, changed);
    }
}
