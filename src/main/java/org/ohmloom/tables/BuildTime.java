package org.ohmloom.tables;

/**
 * How long one operation takes at the bench.
 *
 * @param operation what is done, see the constants
 * @param minutes   time for each, min, more than 0, with its citation
 */
public record BuildTime(String operation, CitedValue minutes) {

    /** A wire cut and marked, an end crimped, a pair twisted, a splice made. */
    public static final String WIRE = "wire", CRIMP = "crimp", TWIST = "twist", SPLICE = "splice";

    /** A segment laid, a cavity filled, a segment covered, a terminal fitted to ground, a net tested. */
    public static final String SEGMENT = "segment",
            CAVITY = "cavity",
            COVERING = "covering",
            GROUND = "ground",
            NET = "net";

    /** Reads a row with the columns operation and each. */
    static BuildTime read(RowReader row) {
        String operation = row.text("operation");
        return new BuildTime(operation, new CitedValue(row.positive("each", "1"), row.citation(operation, "each")));
    }
}
