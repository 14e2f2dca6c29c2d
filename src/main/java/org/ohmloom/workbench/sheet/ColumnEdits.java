package org.ohmloom.workbench.sheet;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import org.ohmloom.edit.Edit;
import org.ohmloom.workbench.words.Term;

/** Makes the editing of a column from its parts. */
public final class ColumnEdits {

    private ColumnEdits() {}

    /** A column of numbers edited in every row; editing starts from the exact number with its unit. */
    public static <R> Column<R> number(
            Term title, String unit, String tip, Function<R, CellText> cell, BiFunction<List<R>, String, Edit> parse) {
        return Column.number(title, unit, tip, cell)
                .edited(ColumnEdits.<R, R>of(
                        row -> true,
                        row -> cell.apply(row).number().isPresent()
                                ? cell.apply(row).exact() + " " + unit
                                : "",
                        row -> row,
                        parse));
    }

    /** A column of words edited in every row; editing starts from what stands there. */
    public static <R> Column<R> words(
            Term title, String tip, int letters, Function<R, String> cell, BiFunction<List<R>, String, Edit> parse) {
        return Column.text(title, tip, letters, cell)
                .edited(ColumnEdits.<R, R>of(row -> true, cell, row -> row, parse));
    }

    /**
     * Editing of some rows.
     *
     * @param suits which rows can be edited
     * @param start the text editing starts from
     * @param id    what the edit is told of a row
     * @param parse makes the edit
     */
    public static <R, I> CellEdit<R> of(
            Predicate<R> suits, Function<R, String> start, Function<R, I> id, BiFunction<List<I>, String, Edit> parse) {
        return new CellEdit<>() {
            @Override
            public boolean suits(R row) {
                return suits.test(row);
            }

            @Override
            public String start(R row) {
                return start.apply(row);
            }

            @Override
            public Edit parse(List<R> rows, String typed) {
                return parse.apply(rows.stream().map(id).toList(), typed);
            }
        };
    }
}
