package org.ohmloom.tables;

import org.ohmloom.words.Refusals;

/**
 * What a sort of covering does to the heat of the wires under it.
 *
 * @param kind                       its name in harness files, as in "CONDUIT"
 * @param gapMm                      air inside, mm, 0 or more
 * @param gapWattsPerMetrePerKelvin  effective heat conductivity of that air with its radiation, W/mK
 * @param wallMm                     wall, mm
 * @param wallWattsPerMetrePerKelvin heat conductivity of the wall, W/mK
 * @param emissivityFraction         emissivity of its outside
 * @param citation                   who says so
 */
public record CoveringType(
        String kind,
        double gapMm,
        double gapWattsPerMetrePerKelvin,
        double wallMm,
        double wallWattsPerMetrePerKelvin,
        double emissivityFraction,
        Citation citation) {

    /** Reads a row with the columns kind, gap, gapConductivity, wall, conductivity and emissivity. */
    static CoveringType read(RowReader row) {
        String kind = row.text("kind");
        double gap = row.number("gap", "mm");
        double emissivity = row.positive("emissivity", "1");
        if (gap < 0) {
            throw row.unfit("gap", Refusals.text("the air inside is less than 0; write 0 or more"));
        }
        if (emissivity > 1) {
            throw row.unfit("emissivity", Refusals.text("the emissivity is above 1; write a number up to 1"));
        }
        return new CoveringType(
                kind,
                gap,
                row.positive("gapConductivity", "W/mK"),
                row.positive("wall", "mm"),
                row.positive("conductivity", "W/mK"),
                emissivity,
                row.citation(kind, "wall"));
    }
}
