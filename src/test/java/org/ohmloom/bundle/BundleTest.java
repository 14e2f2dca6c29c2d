package org.ohmloom.bundle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.heat.LaidHarness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

class BundleTest {
    private static final double EXACT = 1e-12;

    private final WireTables tables = WireTables.bundled();

    private ConductorRow row(String family, Gauge gauge) {
        return tables.family(family).row(gauge).orElseThrow();
    }

    @Test
    void everyWireCountsInEachSegmentOfItsWay() {
        LaidHarness laid = LaidHarness.of("road-vehicle", 12, "ISO 6722-1 class B", 25)
                .open("1")
                .open("2")
                .open("3")
                .wire("W10", "1", "2")
                .wire("W2", "2")
                .wire("W3");
        BundleCounts counts = BundleCounts.of(laid.harness(), laid.routes());
        assertEquals(1, counts.count(new SegmentId("G1")));
        assertEquals(List.of(new WireId("W2"), new WireId("W10")), List.copyOf(counts.in(new SegmentId("G2"))));
        assertEquals(0, counts.count(new SegmentId("G3")));
    }

    @Test
    void tenMetresOfTwoAndAHalfHoldTwoHundredAndTwentyGramsOfCopper() {
        // 8890 kg/m3 (IEC 60028, from memory) x 2.5e-6 m2 x 10 m = 0.22225 kg
        CopperMass mass = new CopperMass(tables.copper().density());
        assertEquals(0.22225, mass.kilograms(row("iso-6722-1", Gauge.metric(2.5)), 10), EXACT);
    }

    @Test
    void aListedDiameterComesWithItsSourceAndAnUnlistedOneIsEmpty() {
        WireDiameters diameters = new WireDiameters(tables);
        // SAE AS22759/32, 22 AWG: 1.09 mm; ISO 6722-1 thin wall, 2.5 mm2: 3.0 mm
        ConductorRow aircraft = row("ac-43.13-1b", Gauge.awg(22));
        assertEquals(
                1.09, diameters.outsideMm("AS22759/32", aircraft).orElseThrow().value(), EXACT);
        ConductorRow road = row("iso-6722-1", Gauge.metric(2.5));
        assertEquals(
                3.0,
                diameters.outsideMm("ISO 6722-1 class B", road).orElseThrow().value(),
                EXACT);
        assertTrue(diameters.outsideMm("105C", aircraft).isEmpty());
    }
}
