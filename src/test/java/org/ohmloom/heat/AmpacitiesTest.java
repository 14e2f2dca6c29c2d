package org.ohmloom.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.heat.balance.HeatBalance;
import org.ohmloom.heat.balance.OpenAir;
import org.ohmloom.model.SizingRules;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.Status;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/** Ampacities by hand from the published rows. */
class AmpacitiesTest {
    private static final double EXACT = 1e-12;
    private static final String CRAFT = "33-cfr-183";
    private static final String AIRCRAFT = "ac-43.13-1b";
    private static final String ROAD = "road-vehicle";

    private final WireTables tables = WireTables.bundled();

    private Ampacity ampacity(LaidHarness laid, Gauge gauge, int loaded) {
        Wire wire = laid.harness().wires().get(new WireId("W1"));
        return find(laid, wire, gauge, loaded).orElseThrow();
    }

    private Optional<Ampacity> find(LaidHarness laid, Wire wire, Gauge gauge, int loaded) {
        String basis = laid.harness().rules().basis();
        return new Ampacities(laid.harness(), tables, tables.basis(basis), laid.routes()).of(wire, gauge, loaded);
    }

    @Test
    void smallCraftAtThirtyDegreesIsTheTableItself() {
        // 33 CFR 183.425 Table 5: 16 AWG, 105 C insulation: 25 A
        Ampacity ampacity = ampacity(LaidHarness.of(CRAFT, 12, "105C", 30).wire("W1"), Gauge.awg(16), 1);
        assertEquals(25, ampacity.limitAmps(), EXACT);
        assertTrue(ampacity.base().citation().text().contains("16 AWG"));
    }

    @Test
    void anEngineSpaceTakesTheFactorOfNoteOne() {
        // 33 CFR 183.425 Table 5 and note 1: 18 AWG, 105 C: 20 A x 0.85 = 17 A
        LaidHarness laid =
                LaidHarness.of(CRAFT, 12, "105C", 30).zone("engine", 50, true).wire("W1", "engine");
        Ampacity ampacity = ampacity(laid, Gauge.awg(18), 1);
        assertEquals(17, ampacity.limitAmps(), EXACT);
        assertEquals("33 CFR 183.425", ampacity.factors().get(0).citation().document());
    }

    @Test
    void anEngineSpaceHotterThanTheNotesTakesTheFormula() {
        // 105 C insulation in 80 C air: sqrt((105 - 80)/(105 - 30)) = 0.57735, below the note's 0.85
        LaidHarness laid =
                LaidHarness.of(CRAFT, 12, "105C", 30).zone("engine", 80, true).wire("W1", "engine");
        assertEquals(20 * Math.sqrt(25.0 / 75), ampacity(laid, Gauge.awg(18), 1).limitAmps(), EXACT);
    }

    @Test
    void coolAirDoesNotRaiseWhatTheRegulationAllows() {
        Ampacity ampacity = ampacity(LaidHarness.of(CRAFT, 12, "105C", 10).wire("W1"), Gauge.awg(16), 1);
        assertEquals(25, ampacity.limitAmps(), EXACT);
    }

    @Test
    void belowFiftyVoltsTheRegulationAsksForNoBundleFactor() {
        LaidHarness laid = LaidHarness.of(CRAFT, 24, "105C", 30).wire("W1");
        Ampacity ampacity = ampacity(laid, Gauge.awg(16), 7);
        assertEquals(25, ampacity.limitAmps(), EXACT);
        Ampacity.Factor bundle = ampacity.factors().get(1);
        assertEquals(1, bundle.ratio(), EXACT);
        assertTrue(bundle.name().english().contains("no factor below 50 V"), bundle.name()::english);
        // from 50 V up note 2 gives 0.5 for 7 to 24 conductors: 12.5 A
        LaidHarness higher = LaidHarness.of(CRAFT, 52, "105C", 30).wire("W1");
        assertEquals(12.5, ampacity(higher, Gauge.awg(16), 7).limitAmps(), EXACT);
    }

    @Test
    void aircraftTableIsNotDeratedTwice() {
        // FAA AC 43.13-1B Table 11-9: 14 AWG, 150 C: 14 A in 70 C air and a bundle of 33 wires at 20 % load.
        // AS22759/16 insulation stands 150 C. Six loaded wires are less than the table assumes: factor 1.
        LaidHarness laid = LaidHarness.of(AIRCRAFT, 28, "AS22759/16", 70).wire("W1");
        assertEquals(14, ampacity(laid, Gauge.awg(14), 6).limitAmps(), EXACT);
        // warmer air: 14 x sqrt((150 - 110)/(150 - 70)) = 9.8995 A
        LaidHarness warm = LaidHarness.of(AIRCRAFT, 28, "AS22759/16", 110).wire("W1");
        assertEquals(14 * Math.sqrt(0.5), ampacity(warm, Gauge.awg(14), 6).limitAmps(), EXACT);
    }

    @Test
    void roadVehicleWireTakesTheHeatBalanceLessItsMarginAndTheBundleCurve() {
        // 1.5 mm2, 105 C in 60 C air, three loaded conductors. MIL-W-5088L at full load between 2 (0.825) and 4 (0.66):
        // 0.7425.
        LaidHarness laid = LaidHarness.of(ROAD, 12, "SAE J1128 TWP", 30)
                .zone("bay", 60, false)
                .wire("W1", "bay");
        Ampacity ampacity = ampacity(laid, Gauge.metric(1.5), 3);
        double alone = alone(laid, Gauge.metric(1.5), 60, 105);
        assertEquals(alone * 0.9 * 0.7425, ampacity.limitAmps(), EXACT);
        assertEquals(60, ampacity.ambientCelsius(), EXACT);
        assertEquals(3, ampacity.loadedCount());
        assertEquals(
                Status.COMMON_PRACTICE,
                ampacity.base().citation().status(),
                "no table of an open standard stands behind it");
        // DIN VDE 0298-4 (carried to 105 C, see the table): 31.1 A in 30 C; x sqrt(45/75) x 0.7425 stands beside it
        MethodComparison beside = ampacity.comparison().orElseThrow();
        assertEquals(31.1 * Math.sqrt(0.6) * 0.7425, beside.tableAmps().orElseThrow(), EXACT);
        assertTrue(beside.byBalance());
        assertTrue(beside.apartFraction().isPresent());
    }

    @Test
    void aThickRoadVehicleWireIsHeldToTheFreeAirTable() {
        // 70 mm2: without a margin the heat balance allows some 10 % more than DIN VDE 0298-4 at its own conditions,
        // 245 A
        LaidHarness laid = LaidHarness.of(ROAD, 12, "DIN VDE PVC 70C", 30)
                .sizing(sizing(Optional.empty(), 0, 0))
                .wire("W1");
        Ampacity ampacity = ampacity(laid, Gauge.metric(70), 1);
        assertEquals(245, ampacity.limitAmps(), EXACT);
        assertTrue(ampacity.comparison().orElseThrow().unsafeSide());
        assertTrue(ampacity.base().citation().text().contains("DIN VDE 0298-4"));
    }

    @Test
    void whoAsksForTheHeatBalanceGetsItAboveTheTableToo() {
        SizingRules rules = sizing(Optional.of(SizingRules.Method.HEAT_BALANCE), 0.05, 0);
        LaidHarness laid =
                LaidHarness.of(ROAD, 12, "DIN VDE PVC 70C", 30).sizing(rules).wire("W1");
        double alone = alone(laid, Gauge.metric(70), 30, 70);
        assertTrue(0.95 * alone > 245);
        assertEquals(0.95 * alone, ampacity(laid, Gauge.metric(70), 1).limitAmps(), 1e-9 * alone);
        // and on small craft, where the regulation's table would decide: 16 AWG, 105 C: 25 A
        LaidHarness craft = LaidHarness.of(CRAFT, 12, "105C", 30).sizing(rules).wire("W1");
        double balanced = ampacity(craft, Gauge.awg(16), 1).limitAmps();
        assertEquals(0.95 * alone(craft, Gauge.awg(16), 30, 105), balanced, EXACT);
    }

    @Test
    void altitudeTakesItsShareWhereTheTableIsForSeaLevel() {
        SizingRules high = sizing(Optional.empty(), 0, 3048);
        LaidHarness laid =
                LaidHarness.of(ROAD, 12, "DIN VDE PVC 70C", 30).sizing(high).wire("W1");
        // AC 43.13-1B figure 11-5: 0.91 at 20,000 ft; 10,000 ft is half of the way from 1: 0.955
        assertEquals(245 * 0.955, ampacity(laid, Gauge.metric(70), 1).limitAmps(), 1e-9 * 245);
        // Table 11-9 holds to 60,000 ft already
        LaidHarness aircraft =
                LaidHarness.of(AIRCRAFT, 28, "AS22759/16", 70).sizing(high).wire("W1");
        assertEquals(14, ampacity(aircraft, Gauge.awg(14), 6).limitAmps(), EXACT);
    }

    private static SizingRules sizing(Optional<SizingRules.Method> method, double margin, double altitudeMetres) {
        return new SizingRules(
                method,
                OptionalDouble.of(margin),
                OptionalDouble.of(altitudeMetres),
                List.of(),
                false,
                OptionalDouble.empty());
    }

    private double alone(LaidHarness laid, Gauge gauge, double ambient, double limit) {
        Wire wire = laid.harness().wires().get(new WireId("W1"));
        String basis = laid.harness().rules().basis();
        Ampacities ampacities = new Ampacities(laid.harness(), tables, tables.basis(basis), laid.routes());
        return HeatBalance.bare(ampacities.shape(wire, gauge).wire(), OpenAir.seaLevel(ambient))
                .ampacityAmps(limit);
    }

    @Test
    void airAsHotAsTheInsulationLeavesNothing() {
        LaidHarness laid = LaidHarness.of(ROAD, 12, "SAE J1128 TWP", 30)
                .zone("bay", 105, false)
                .wire("W1", "bay");
        assertEquals(0, ampacity(laid, Gauge.metric(1.5), 1).limitAmps(), EXACT);
    }

    @Test
    void theHottestZoneOnTheWayCounts() {
        LaidHarness laid = LaidHarness.of(ROAD, 12, "SAE J1128 TWP", 25)
                .zone("bay", 90, false)
                .zone("cab", 50, false)
                .open("rail")
                .wire("W1", "cab", "bay", "rail")
                .wire("W2", "cab")
                .wire("W3");
        Ampacities ampacities = new Ampacities(laid.harness(), tables, tables.basis(ROAD), laid.routes());
        assertEquals(90, ampacities.ambientCelsius(laid.harness().wires().get(new WireId("W1"))), EXACT);
        // wholly inside one zone: that zone, though the default is another
        assertEquals(50, ampacities.ambientCelsius(laid.harness().wires().get(new WireId("W2"))), EXACT);
        // nothing known of the way: the default
        assertEquals(25, ampacities.ambientCelsius(laid.harness().wires().get(new WireId("W3"))), EXACT);
    }

    @Test
    void anUnknownInsulationHasNoAmpacity() {
        LaidHarness laid = LaidHarness.of(ROAD, 12, "invented", 30).wire("W1");
        Wire wire = laid.harness().wires().get(new WireId("W1"));
        assertTrue(find(laid, wire, Gauge.metric(1.5), 1).isEmpty());
        Ampacities ampacities = new Ampacities(laid.harness(), tables, tables.basis(ROAD), laid.routes());
        assertEquals(30, ampacities.celsius(wire, Gauge.metric(1.5), Optional.empty(), 20), EXACT);
    }

    @Test
    void loadedConductorsAreCountedInTheFullestSegment() {
        LaidHarness laid = LaidHarness.of(ROAD, 12, "SAE J1128 TWP", 30)
                .open("1")
                .open("2")
                .wire("W1", "1", "2")
                .wire("W2", "1")
                .wire("W3", "2")
                .wire("W4", "2")
                .wire("W5", "2");
        Map<WireId, Double> amps = Map.of(
                new WireId("W1"), 0.0,
                new WireId("W2"), 5.0,
                new WireId("W3"), -2.0,
                new WireId("W4"), 0.2,
                new WireId("W5"), 0.1);
        LoadedConductors loaded = LoadedConductors.of(laid.harness(), laid.routes(), amps);
        // segment 2: W3 and W4 carry, W5 at 0.1 A does not count, W1 counts for its own ampacity
        assertEquals(3, loaded.alongside(laid.harness().wires().get(new WireId("W1"))));
        assertEquals(2, loaded.alongside(laid.harness().wires().get(new WireId("W3"))));
        assertEquals(1, loaded.alongside(laid.harness().wires().get(new WireId("W2"))));
    }
}
