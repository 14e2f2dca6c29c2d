package org.ohmloom.tables;

/**
 * A terminal number of road vehicle equipment.
 *
 * @param number   the number or letter as marked, as in "87a"
 * @param meaning  what it is, in our words
 * @param citation where it comes from
 */
public record TerminalNumber(String number, String meaning, Citation citation) {
    /** Reads a row with the columns terminal and meaning. */
    static TerminalNumber read(RowReader row) {
        String number = row.text("terminal");
        return new TerminalNumber(number, row.text("meaning"), row.citation(number, "meaning"));
    }
}
