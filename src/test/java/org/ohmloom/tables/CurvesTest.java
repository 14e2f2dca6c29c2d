package org.ohmloom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Curves between their points: bundle by load, altitude, free-air rows between sizes. */
class CurvesTest {
    private static final double EXACT = 1e-12;
    private final WireTables tables = WireTables.bundled();

    @Test
    void theBundleCurveIsReadAlongTheLineBetweenItsPoints() {
        BundleFactors curve = tables.bundleFactors("mil-w-5088l");
        // MIL-W-5088L: 2 wires 0.825, 4 wires 0.66: 3 wires between
        assertEquals(0.7425, curve.factor(3).value(), EXACT);
        assertEquals(0.66, curve.factor(4).value(), EXACT);
        // 8 wires, 60 % of total capacity: 0.595; AC 43.13-1B's own example reads 0.6
        assertEquals(0.595, curve.factor(8, 1, 0.6).value(), EXACT);
        // between 60 % (0.595) and 80 % (0.5425): 70 %
        assertEquals(0.56875, curve.factor(8, 1, 0.7).value(), EXACT);
        // 11 wires at 20 %: between 10 (0.755) and 12 (0.715)
        assertEquals(0.735, curve.factor(11, 1, 0.2).value(), EXACT);
        // less than the least curve: the least curve
        assertEquals(curve.factor(8, 1, 0.2).value(), curve.factor(8, 1, 0.05).value(), EXACT);
        // a table of steps stays one: 33 CFR 183.425 note 2 has 0.6 for 4 to 6
        assertEquals(
                0.6,
                tables.bundleFactors("33-cfr-183.425-note-2").factor(5, 1, 0.2).value(),
                EXACT);
    }

    @Test
    void altitudeIsReadBetweenThePointsOfTheChart() {
        AltitudeFactors factors = tables.altitudeFactors("ac-43.13-1b-altitude");
        // AC 43.13-1B figure 11-5: 0.91 at 20,000 ft, 0.86 at 35,000 ft
        assertEquals(1, factors.factor(0).value(), EXACT);
        assertEquals(0.91, factors.factor(6096).value(), EXACT);
        assertEquals(0.86, factors.factor(10_668).value(), 1e-9);
        assertEquals(0.955, factors.factor(3048).value(), EXACT);
        // the last stretch goes on: 50,000 ft is as far again beyond 35,000 ft
        assertEquals(0.81, factors.factor(15_240).value(), 1e-9);
    }

    @Test
    void aSizeBetweenTwoRowsTakesACurrentBetweenThem() {
        AmpacityTable table = tables.ampacity("din-vde-0298-4");
        ConductorRow twoMm2 = tables.family("iso-6722-1").rows().stream()
                .filter(row -> row.gauge().text().equals("2 mm2"))
                .findFirst()
                .orElseThrow();
        // 1.5 mm2 24 A, 2.5 mm2 32 A at 70 C: 24 x (32/24)^(ln(2/1.5)/ln(2.5/1.5)) = 28.2 A
        double expected = 24 * Math.pow(32.0 / 24, Math.log(2 / 1.5) / Math.log(2.5 / 1.5));
        CitedValue found = table.ampsAlong(twoMm2, 70).orElseThrow();
        assertEquals(expected, found.value(), 1e-9);
        assertTrue(
                found.citation().row().startsWith("between 1.5 mm2 and 2.5 mm2"),
                found.citation().row());
    }

    @Test
    void everySortOfCoveringHasItsHeat() {
        for (String kind : new String[] {"TAPE", "BRAIDED_SLEEVE", "CONDUIT", "HEAT_SHRINK", "TUBE"}) {
            assertTrue(tables.findCovering(kind).orElseThrow().wallMm() > 0, kind);
        }
    }
}
