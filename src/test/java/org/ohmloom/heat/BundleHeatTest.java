package org.ohmloom.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.heat.balance.HeatBalance;
import org.ohmloom.heat.balance.OpenAir;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.heat.balance.Transient;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/** Temperatures of the wires of a laid harness, and their way from one to another. */
class BundleHeatTest {
    private static final double KELVIN = 0.02;

    private final WireTables tables = WireTables.bundled();
    private final LaidHarness laid = LaidHarness.of("road-vehicle", 12, "SAE J1128 TWP", 30)
            .zone("bay", 70, false)
            .open("cab")
            .wire("W1", "bay", "cab")
            .wire("W2", "bay")
            .wire("W3", "cab")
            .wire("W4");
    private final Ampacities ampacities =
            new Ampacities(laid.harness(), tables, tables.basis("road-vehicle"), laid.routes());
    private final BundleHeat heat = new BundleHeat(laid.harness(), tables, laid.routes(), ampacities);
    private final RoundWire shape =
            ampacities.shape(wire("W1"), Gauge.metric(1.5)).wire();

    private Wire wire(String id) {
        return laid.harness().wires().get(new WireId(id));
    }

    private SortedMap<WireId, WireHeat> settle(Map<String, Double> amps) {
        return heat.settle(
                wire -> Gauge.metric(1.5), wire -> amps.getOrDefault(wire.id().value(), 0.0), Map.of());
    }

    @Test
    void aWireWithoutCurrentLiesAtTheHottestAirOfItsWay() {
        SortedMap<WireId, WireHeat> cold = settle(Map.of());
        assertEquals(70, cold.get(new WireId("W1")).celsius(), KELVIN);
        assertEquals(30, cold.get(new WireId("W3")).celsius(), KELVIN);
        assertEquals(30, cold.get(new WireId("W4")).celsius(), KELVIN);
    }

    @Test
    void aWireAloneRunsAtItsOwnHeatBalanceWhateverTheSignOfItsCurrent() {
        double alone = HeatBalance.bare(shape, OpenAir.seaLevel(30)).at(12).celsius();
        assertEquals(alone, settle(Map.of("W4", -12.0)).get(new WireId("W4")).celsius(), KELVIN);
    }

    @Test
    void neighboursWarmEachOtherAndTheHottestPlaceIsNamed() {
        SortedMap<WireId, WireHeat> warm = settle(Map.of("W1", 12.0, "W2", 12.0));
        double alone = HeatBalance.bare(shape, OpenAir.seaLevel(70)).at(12).celsius();
        WireHeat first = warm.get(new WireId("W1"));
        assertTrue(first.celsius() > alone + 2, first + " against " + alone);
        assertTrue(first.place().contains("Gbay") && first.place().contains("1 other wire"), first.place());
        // the idle wire in the cab is warmed by W1 there
        assertTrue(warm.get(new WireId("W3")).celsius() > 31);
        assertFalse(first.runaway());
    }

    @Test
    void aShortStateWarmsFromTheRunningTemperature() {
        PassingHeat passing = new PassingHeat(ampacities);
        WireHeat running = settle(Map.of("W4", 10.0)).get(new WireId("W4"));
        WireHeat after = passing.after(shape, running, 10, 40, 10);
        // what the transient of the wire alone says from the same start
        double expected =
                new Transient(HeatBalance.bare(shape, OpenAir.seaLevel(30))).celsiusAfter(running.celsius(), 40, 10);
        assertEquals(expected, after.celsius(), 0.1);
        assertTrue(after.celsius() > running.celsius() + 10);
        // less current than before warms nothing
        assertEquals(running, passing.after(shape, running, 10, 5, 10));
    }

    @Test
    void aSlowCyclePeaksAboveItsMeanSquareAndAFastOneDoesNot() {
        PassingHeat passing = new PassingHeat(ampacities);
        double rms = 20 / Math.sqrt(2);
        WireHeat settled = settle(Map.of("W4", rms)).get(new WireId("W4"));
        double tau = passing.timeConstantSeconds(shape, settled, rms);
        assertTrue(tau > 20 && tau < 120, "1.5 mm2: " + tau + " s");
        double slow = passing.peakAboveKelvin(
                shape, settled, rms, List.of(new Transient.Stretch(tau, 20), new Transient.Stretch(tau, 0)));
        double fast = passing.peakAboveKelvin(
                shape,
                settled,
                rms,
                List.of(new Transient.Stretch(tau / 100, 20), new Transient.Stretch(tau / 100, 0)));
        assertTrue(slow > 5, "slow: " + slow);
        assertTrue(fast < 0.5, "fast: " + fast);
    }

    @Test
    void theChartProcedureOfAircraftPracticeComesOutAsItsWorkedExample() {
        // FAA AC 43.13-1B CHG 1, Example No. 2: 14 AWG, 200 C in 50 C air, 20,000 ft, 8 wires at 60 %: 26 A.
        // Its free-air chart reads 47 A, ours is within 3 % of it; MIL-W-5088L has 0.595 for the bundle.
        Optional<ChartAmps> chart = ChartAmps.of(
                tables,
                tables.basis("ac-43.13-1b"),
                new RoundWire(3.06 / 304.8, 1.72, 1.75, 2.3, RoundWire.USUAL_INSULATION),
                50,
                200,
                new BundleLoading(8, 0.6),
                6096);
        assertEquals(26, chart.orElseThrow().amps(), 0.03 * 26);
        assertTrue(ChartAmps.of(tables, tables.basis("road-vehicle"), shape, 50, 105, new BundleLoading(8, 0.6), 0)
                .isEmpty());
    }

    @Test
    void skinDepthIsSaidToMatterOnlyWhereItHeats() {
        SkinCheck fan = SkinCheck.of(300, shape, 60, 0.5);
        assertFalse(fan.matters(), fan.words());
        RoundWire thick = ampacities.shape(wire("W1"), Gauge.metric(35)).wire();
        SkinCheck driver = SkinCheck.of(20_000, thick, 60, 0.5);
        assertTrue(driver.matters(), driver.words());
        assertTrue(driver.depthMm() < driver.conductorRadiusMm() && driver.depthMm() > driver.strandRadiusMm());
    }
}
