package org.ohmloom.tables;

import java.util.Optional;

/**
 * How long a data bus may be at one bit rate by one set of limits.
 *
 * @param set             the set, as {@code iso-11898-2}
 * @param title           what people call the set
 * @param bitsPerSecond   bit rate, bit/s
 * @param busMetres       most length between the terminations, m, if limited
 * @param stubMetres      most length of one stub, m, if limited
 * @param stubTotalMetres most length of all stubs together, m, if limited
 * @param nodes           most nodes, if limited
 * @param shield          {@code yes} where the set wants a shield, {@code no} where it goes without; empty where it says nothing
 */
public record BusLimit(
        String set,
        String title,
        double bitsPerSecond,
        Optional<CitedValue> busMetres,
        Optional<CitedValue> stubMetres,
        Optional<CitedValue> stubTotalMetres,
        Optional<CitedValue> nodes,
        Optional<String> shield) {

    /** Reads a row with the columns set, title, bitRate, bus, stub, stubTotal, nodes, shield. */
    static BusLimit read(RowReader row) {
        return new BusLimit(
                row.text("set"),
                row.text("title"),
                row.positive("bitRate", "bit/s"),
                cited(row, "bus", "m"),
                cited(row, "stub", "m"),
                cited(row, "stubTotal", "m"),
                cited(row, "nodes", "1"),
                row.optionalText("shield"));
    }

    private static Optional<CitedValue> cited(RowReader row, String column, String unit) {
        return row.optionalText(column).isEmpty()
                ? Optional.empty()
                : Optional.of(new CitedValue(
                        row.positive(column, unit), row.citation(row.text("bitRate") + " kbit/s", column)));
    }
}
