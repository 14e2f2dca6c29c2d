package org.ohmloom.tables;

/**
 * How far a ground may be from its reference, or a bus line from the ground of who listens to it.
 *
 * @param item  what it limits, see the constants
 * @param volts the limit, V
 */
public record GroundLimit(String item, CitedValue volts) {

    /** Ground of a control unit, any other ground; what a unit must stand. */
    public static final String UNIT = "control-unit-ground", OTHER = "other-ground", SURVIVAL = "survival";

    /** What a receiver on a bus takes, and what its lines reach at the sender. */
    public static final String COMMON_MODE_LOW = "bus-common-mode-low",
            COMMON_MODE_HIGH = "bus-common-mode-high",
            LOW_LINE_LEAST = "bus-low-line-least",
            HIGH_LINE_MOST = "bus-high-line-most";

    /** Reads a row with the columns item and limit. */
    static GroundLimit read(RowReader row) {
        String item = row.text("item");
        return new GroundLimit(item, new CitedValue(row.number("limit", "V"), row.citation("", "limit")));
    }
}
