package org.ohmloom.tables;

import java.util.List;

/**
 * One line of a table file.
 *
 * @param line       its line in the file, from 1
 * @param cells      its cells, one per column of the sheet, without the status column
 * @param status     its own status, or the sheet's where it gives none
 * @param statusText the status as written, with the formula of a computed one
 */
public record TableRow(int line, List<String> cells, Status status, String statusText) {
    /** Keeps an unmodifiable copy. */
    public TableRow {
        cells = List.copyOf(cells);
    }
}
