package org.ohmloom.tables;

/**
 * The largest direct current a type of fuse can interrupt at a rated voltage.
 *
 * @param ratedVolts rated voltage, V, more than 0
 * @param amps       what it can interrupt, A
 */
public record BreakingCapacity(double ratedVolts, CitedValue amps) {
    /** Reads a row with the columns type, ratedVolts and breakingAmps. */
    static BreakingCapacity read(RowReader row) {
        String text = row.text("type") + " at " + row.text("ratedVolts") + " V";
        return new BreakingCapacity(
                row.positive("ratedVolts", "V"),
                new CitedValue(row.positive("breakingAmps", "A"), row.citation(text, "breakingAmps")));
    }
}
