package org.ohmloom.tables;

import java.util.OptionalDouble;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.units.Require;

/**
 * One conductor size of a family.
 *
 * @param gauge                  its size label
 * @param copperAreaMm2          copper area, mm2, more than 0: from the listed circular mils for AWG; for metric sizes
 *                               the nominal label, see {@link #areaIsNominalLabel()}
 * @param ohmsPerMetreAt20Celsius listed maximum resistance at 20 C, ohm/m, more than 0
 * @param outsideDiameterMm      outside diameter with the insulation the family's table names, mm, where listed
 * @param citation               where the resistance comes from
 */
public record ConductorRow(
        Gauge gauge,
        double copperAreaMm2,
        double ohmsPerMetreAt20Celsius,
        OptionalDouble outsideDiameterMm,
        Citation citation) {
    /** Resistivity of 100 % IACS copper at 20 C, ohm mm2/m: IEC 60028 (1925), clause 1. */
    private static final double IACS_OHM_MM2_PER_METRE = 1.0 / 58;

    /** Refuses sizes that cannot be. */
    public ConductorRow {
        Require.positive(copperAreaMm2, "copper area in mm2");
        Require.positive(ohmsPerMetreAt20Celsius, "resistance in ohm/m");
    }

    /** Whether the copper area is only the size's label; real metric conductors hold up to 14 % less copper. */
    public boolean areaIsNominalLabel() {
        return gauge.system() == GaugeSystem.METRIC;
    }

    /**
     * The copper area that is sure to be there, mm2: the listed area, or the area of pure copper of the listed
     * resistance where that is smaller. For looking the conductor up in another system's ampacity table.
     */
    public double assuredCopperAreaMm2() {
        return Math.min(copperAreaMm2, IACS_OHM_MM2_PER_METRE / ohmsPerMetreAt20Celsius);
    }

    /**
     * The resistance it has with all the copper of its area over the listed maximum, at most 1: the least a conductor of this
     * size can have.
     */
    public double leastResistanceRatio() {
        return Math.min(1, IACS_OHM_MM2_PER_METRE / copperAreaMm2 / ohmsPerMetreAt20Celsius);
    }
}
