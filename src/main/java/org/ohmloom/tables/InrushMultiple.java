package org.ohmloom.tables;

/**
 * How much more than its steady current a kind of load takes when it is switched on.
 *
 * @param load kind of load
 * @param low  least multiple of the steady current
 * @param high largest multiple
 */
public record InrushMultiple(String load, CitedValue low, CitedValue high) {

    /** The kind of load of a filament lamp. */
    public static final String LAMP = "filament lamp";

    /** Reads a row with the columns load, low, high and document. */
    static InrushMultiple read(RowReader row) {
        String load = row.text("load");
        return new InrushMultiple(
                load,
                new CitedValue(row.positive("low", "1"), row.citation(load, "low")),
                new CitedValue(row.positive("high", "1"), row.citation(load, "high")));
    }
}
