package org.ohmloom.tables;

import org.ohmloom.units.Gauge;

/**
 * The outside diameter of an insulated wire.
 *
 * @param series     the wire's standard, as in "AS22759/32"
 * @param gauge      its size
 * @param diameterMm diameter, mm, with its citation
 */
public record OutsideDiameter(String series, Gauge gauge, CitedValue diameterMm) {
    /** Reads a row with the columns series, gauge and outsideDiameter. */
    static OutsideDiameter read(RowReader row) {
        Gauge gauge = row.gauge("gauge");
        String series = row.text("series");
        CitedValue diameter = new CitedValue(
                row.positive("outsideDiameter", "mm"), row.citation(series + " " + gauge.text(), "outsideDiameter"));
        return new OutsideDiameter(series, gauge, diameter);
    }
}
