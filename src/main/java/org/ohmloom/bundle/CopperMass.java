package org.ohmloom.bundle;

import static org.ohmloom.units.Require.notNegative;

import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.ConductorRow;

/**
 * Mass of the copper in wires: density x area x length. The strands' lay and the insulation are not in it; for metric
 * sizes the area is the size's label, which is a little more than the copper there.
 *
 * @param density density of copper, kg/m3, with its source: the tables' {@code copper().density()}
 */
public record CopperMass(CitedValue density) {

    private static final double SQUARE_METRES_IN_MM2 = 1e-6;

    /** Mass of the copper in a length of a conductor, kg; the length in m, 0 or more. */
    public double kilograms(ConductorRow row, double lengthMetres) {
        return kilograms(row.copperAreaMm2(), lengthMetres);
    }

    /** Mass of the copper of a cross-section over a length, kg; the section in mm2, the length in m, 0 or more both. */
    public double kilograms(double areaMm2, double lengthMetres) {
        return density.value()
                * notNegative(areaMm2, "cross-section of a conductor")
                * SQUARE_METRES_IN_MM2
                * notNegative(lengthMetres, "length of a conductor");
    }
}
