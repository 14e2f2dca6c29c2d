package org.ohmloom.pack.page;

import java.util.List;

/**
 * One row of a table.
 *
 * @param kind  what it is
 * @param cells a cell for each column; for a {@link Kind#GROUP} one cell that heads the rows below it
 */
public record Row(Kind kind, List<Cell> cells) {

    /** What a row is. */
    public enum Kind {
        /** A thing of the list. */
        ITEM,
        /** A heading over the items that follow; on the page only. */
        GROUP,
        /** A sum over items; on the page only. */
        TOTAL
    }

    public Row {
        cells = List.copyOf(cells);
    }

    /** An item. */
    public static Row of(Cell... cells) {
        return new Row(Kind.ITEM, List.of(cells));
    }

    /** A heading over the items that follow. */
    public static Row group(String text) {
        return new Row(Kind.GROUP, List.of(Cell.text(text).toned(Cell.Tone.STRONG)));
    }

    /** A sum. */
    public static Row total(Cell... cells) {
        return new Row(Kind.TOTAL, List.of(cells));
    }
}
