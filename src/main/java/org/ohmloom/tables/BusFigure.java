package org.ohmloom.tables;

/**
 * An electrical figure of a data bus, or how far it may be loaded.
 *
 * @param item  its name, see the constants
 * @param words what it is, for people
 * @param unit  ohm, V, m or 1
 * @param value the figure in that unit
 */
public record BusFigure(String item, String words, String unit, CitedValue value) {

    /** Resistance of a termination, ohm: usual, least, most. */
    public static final String TERMINATION = "termination",
            TERMINATION_LEAST = "termination-least",
            TERMINATION_MOST = "termination-most";

    /** What the resistance of the lines is held against: V, V, 1, ohm, ohm. */
    public static final String DRIVER_LEAST_VOLTS = "driver-least-volts",
            RECEIVER_MOST_VOLTS = "receiver-most-volts",
            RECEIVER_MARGIN = "receiver-margin",
            TERMINATION_OF_LENGTH = "termination-of-length",
            RECEIVER_LEAST_OHMS = "receiver-least-ohms";

    /** Least load of a driver, ohm; most load of the bus, 1; least twisted pair between joints, m. */
    public static final String LOAD_LEAST_OHMS = "load-least-ohms",
            LOAD_MOST = "load-most",
            PAIR_BETWEEN_JOINTS = "pair-between-joints";

    /** Reads a row with the columns item, value, unit and words. */
    static BusFigure read(RowReader row) {
        String item = row.text("item");
        return new BusFigure(
                item,
                row.text("words"),
                row.text("unit"),
                new CitedValue(row.plainNumber("value"), row.citation(item, "value")));
    }
}
