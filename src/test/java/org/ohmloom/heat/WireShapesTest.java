package org.ohmloom.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/** Outside diameters that the heat balance is given. */
class WireShapesTest {
    private static final WireTables TABLES = WireTables.bundled();
    private static final double EXACT = 1e-9;

    private static ConductorRow row(Gauge gauge, String family) {
        return TABLES.family(family).row(gauge).orElseThrow();
    }

    private static WireShape shape(ConductorRow row, Optional<String> insulation) {
        return new WireShapes(TABLES).of(row, insulation.map(TABLES::insulation));
    }

    @Test
    void aSizeItsFamilyListsIsAsThickAsListed() {
        // ISO 6722-1: 1 mm2, 2.1 mm
        WireShape one = shape(row(Gauge.metric(1), "iso-6722-1"), Optional.empty());
        assertEquals(2.1, one.wire().outsideDiameterMm());
        assertEquals("outside 2.10 mm as listed, insulation 0.17 W/mK", one.words());
    }

    @Test
    void theListOfTheInsulationGoesBeforeThatOfTheFamily() {
        // SAE AS22759/32, from memory: 20 AWG, 1.27 mm
        ConductorRow row = twentyAwg();
        assertEquals(1.27, shape(row, Optional.of("AS22759/32")).wire().outsideDiameterMm());
    }

    @Test
    void aSizeNotListedIsScaledFromTheNearestByTheRootOfTheArea() {
        // AS22759/16 lists 22 AWG alone, 1.37 mm; 20 AWG is 92^(2/39) = 1.261 times as thick (ASTM B258)
        WireShape scaled = shape(twentyAwg(), Optional.of("AS22759/16"));
        assertEquals(1.37 * Math.pow(92, 2.0 / 39), scaled.wire().outsideDiameterMm(), EXACT);
        assertEquals("outside 1.73 mm scaled from 22 AWG", scaled.words().split(",")[0]);
    }

    @Test
    void strandsAreFifteenPerCentThickerThanSolidCopperOfTheirResistance() {
        // 1 mm2 of 18.5 mohm/m has 1 / (58 x 0.0185) = 0.932 mm2 of copper: 1.15 x 1.0893 mm
        double strandsMm = shape(row(Gauge.metric(1), "iso-6722-1"), Optional.empty())
                .wire()
                .conductorDiameterMm();
        assertEquals(1.15 * 2 * Math.sqrt(1 / (58 * 0.0185) / Math.PI), strandsMm, EXACT);
    }

    private static ConductorRow twentyAwg() {
        return TABLES.families().stream()
                .flatMap(family -> family.rows().stream())
                .filter(row -> row.gauge().equals(Gauge.awg(20)))
                .findFirst()
                .orElseThrow();
    }
}
