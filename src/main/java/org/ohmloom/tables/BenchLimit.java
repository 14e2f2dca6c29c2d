package org.ohmloom.tables;

/**
 * A limit or a count of the tests a finished harness passes on the bench.
 *
 * @param item  what it is for, see the constants
 * @param value the number, in the unit the constant names
 */
public record BenchLimit(String item, CitedValue value) {

    /** Error of a resistance measured with two or four wires, ohm; expected resistance below which four are used, ohm. */
    public static final String TWO_WIRE_OHMS = "two-wire-error",
            FOUR_WIRE_OHMS = "four-wire-error",
            FOUR_WIRE_BELOW_OHMS = "four-wire-below";

    /** Share of the listed resistance of the wires below which a measured one is not to be believed. */
    public static final String PLAUSIBLE_FRACTION = "plausible-least";

    /** Least isolation between nets, ohm; voltage it is tested at, V; time for the reading to settle, s. */
    public static final String ISOLATION_OHMS = "isolation-least",
            ISOLATION_VOLTS = "isolation-volts",
            ISOLATION_SECONDS = "isolation-settling";

    /** Crimps pulled for each set-up, a count; speed of the pull, mm/min; how long the force is held, s. */
    public static final String PULL_COUNT = "pull-samples", PULL_RATE = "pull-rate", PULL_SECONDS = "pull-hold";

    /** Reads a row with the columns item and value. */
    static BenchLimit read(RowReader row) {
        String item = row.text("item");
        return new BenchLimit(item, new CitedValue(row.plainNumber("value"), row.citation(item, "value")));
    }
}
