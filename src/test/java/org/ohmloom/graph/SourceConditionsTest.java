package org.ohmloom.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.AlternatorModel;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BatteryModel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.SourceSetting;
import org.ohmloom.model.SpeedLimit;
import org.ohmloom.model.WireEnd;
import org.ohmloom.tables.WireTables;
import org.ohmloom.words.Text;

/** Batteries and alternators in their operating states. */
class SourceConditionsTest {
    private static final double EXACT = 1e-12;

    private static final WireTables TABLES = WireTables.bundled();

    private static final ComponentId BATTERY = new ComponentId("BAT1");
    private static final ComponentId ALTERNATOR = new ComponentId("ALT1");

    private static Harness harness(Optional<AlternatorModel> model) {
        return new HarnessSketch()
                .component("BAT1", new Battery(12.84, 0.005, 60, Optional.of(BatteryModel.of("lead-acid-agm"))))
                .component("ALT1", new Alternator(14.4, 0.01, 100, model))
                .load("L1", 10, 12)
                .harness();
    }

    private static BatteryCondition battery(OperatingState state) {
        Harness harness = harness(Optional.empty());
        return SourceConditions.of(harness, TABLES)
                .battery(
                        harness.components().get(BATTERY),
                        (Battery) harness.components().get(BATTERY).device(),
                        state);
    }

    private static AlternatorCondition alternator(AlternatorModel model, OperatingState state) {
        Harness harness = harness(Optional.of(model));
        return SourceConditions.of(harness, TABLES)
                .alternator(
                        harness.components().get(ALTERNATOR),
                        (Alternator) harness.components().get(ALTERNATOR).device(),
                        state);
    }

    private static OperatingState state(EngineMode mode) {
        return OperatingState.of("s", "s", mode);
    }

    private static AlternatorModel model(SortedMap<EngineMode, Double> byMode, List<SpeedLimit> bySpeed) {
        return new AlternatorModel(
                Optional.of(new WireEnd.AtTerminal(BATTERY, "+")),
                OptionalDouble.of(-0.01),
                OptionalDouble.of(25),
                bySpeed,
                byMode,
                OptionalDouble.of(0.004),
                OptionalDouble.of(75));
    }

    @Test
    void aHalfFullWarmBatteryInALongState() {
        // lead-acid-agm at 50 %: 12.84 V x 2.03 / 2.14 = 12.18 V; 5 mohm x 1 (25 C) x 1.25 (50 %) x 3 (lasting) = 18.75
        // mohm; charged over 1.2 times that; accepts 0.4 A/Ah x 60 Ah = 24 A
        BatteryCondition half = battery(state(EngineMode.OFF)
                .withSource(BATTERY, SourceSetting.ON.withChargeFraction(0.5).withCelsius(25)));
        assertEquals(12.18, half.emfVolts(), EXACT);
        assertEquals(0.01875, half.ohms(), EXACT);
        assertEquals(0.0225, half.chargeOhms(), EXACT);
        assertEquals(24, half.acceptanceAmps(), EXACT);
        assertTrue(half.assumptions().isEmpty());
    }

    @Test
    void aBatteryIsColdWhileCrankingUnlessTheStateSaysHowWarm() {
        // 5 mohm x 2.5 (-18 C) x 1 (full) x 2.162 (30 s) = 27.025 mohm
        BatteryCondition cold = battery(state(EngineMode.CRANKING));
        assertEquals(0.027025, cold.ohms(), EXACT);
        assertEquals(3, cold.assumptions().size());
        // -9 C lies halfway between 2.5 at -18 C and 1.54 at 0 C: 2.02; 5 s: 1.458
        BatteryCondition said = battery(state(EngineMode.CRANKING)
                .withDurationSeconds(5)
                .withSource(BATTERY, SourceSetting.ON.withChargeFraction(1).withCelsius(-9)));
        assertEquals(0.005 * 2.02 * 1.458, said.ohms(), EXACT);
        assertTrue(said.assumptions().isEmpty());
    }

    @Test
    void everyFigureOfABatteryNamesItsTableRow() {
        List<String> steps = Text.english(battery(state(EngineMode.CRANKING)).steps());
        assertTrue(steps.stream().anyMatch(step -> step.contains("12.84 V full")), steps::toString);
        assertTrue(steps.stream().anyMatch(step -> step.contains("SAE J537")), steps::toString);
    }

    @Test
    void theSetPointFollowsTheTemperature() {
        // 14.4 V - 0.01 V/K x (85 - 25) K = 13.8 V
        AlternatorCondition hot = alternator(
                model(new TreeMap<>(), List.of()),
                state(EngineMode.RUNNING).withSource(ALTERNATOR, SourceSetting.ON.withCelsius(85)));
        assertEquals(13.8, hot.setPointVolts(), EXACT);
        // 100 A x (1 - 0.004 x (85 - 75)) = 96 A
        assertEquals(96, hot.limitAmps(), EXACT);
    }

    @Test
    void theLimitComesFromTheStateThenTheSpeedThenTheModeThenTheRating() {
        SortedMap<EngineMode, Double> byMode = new TreeMap<>();
        byMode.put(EngineMode.IDLING, 45.0);
        List<SpeedLimit> curve = List.of(new SpeedLimit(1500, 0), new SpeedLimit(2000, 40), new SpeedLimit(6000, 100));
        AlternatorModel all = model(byMode, curve);
        OperatingState idling = state(EngineMode.IDLING);
        SourceSetting turning = new SourceSetting(
                true, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(3000), OptionalDouble.empty());
        // 3000 rpm: 40 + (3000 - 2000) / 4000 x 60 = 55 A
        assertEquals(55, alternator(all, idling.withSource(ALTERNATOR, turning)).limitAmps(), EXACT);
        assertEquals(45, alternator(all, idling.withSource(ALTERNATOR, true)).limitAmps(), EXACT);
        assertEquals(
                100,
                alternator(all, state(EngineMode.RUNNING).withSource(ALTERNATOR, true))
                        .limitAmps(),
                EXACT);
        SourceSetting said = new SourceSetting(
                true, OptionalDouble.empty(), OptionalDouble.of(110), OptionalDouble.of(3000), OptionalDouble.of(30));
        assertEquals(30, alternator(all, idling.withSource(ALTERNATOR, said)).limitAmps(), EXACT);
    }

    @Test
    void anAlternatorTurningTooSlowlyIsAtRest() {
        SourceSetting slow = new SourceSetting(
                true, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(1000), OptionalDouble.empty());
        AlternatorCondition condition = alternator(
                model(new TreeMap<>(), List.of(new SpeedLimit(1500, 5), new SpeedLimit(6000, 100))),
                state(EngineMode.IDLING).withSource(ALTERNATOR, slow));
        assertEquals(0, condition.limitAmps());
        assertEquals(new Law.Open(), condition.law());
    }

    @Test
    void theNetworkHasTheBatterysLawAndTheAlternatorsSensePoint() {
        Harness harness = harness(Optional.of(model(new TreeMap<>(), List.of())));
        OperatingState state = state(EngineMode.RUNNING)
                .withSource(ALTERNATOR, SourceSetting.ON.withCelsius(35))
                .withSource(BATTERY, SourceSetting.ON.withChargeFraction(0.5));
        Network network = NetworkBuilder.build(harness, state, wire -> 0.01, TABLES);
        Law.VoltageSource law = (Law.VoltageSource)
                network.branch(new BranchId("BAT1")).orElseThrow().law();
        assertEquals(-24, law.minimumAmps(), EXACT);
        assertEquals(List.of(new Sensing(new BranchId("ALT1"), new PointId("BAT1.+"), 14.3)), network.sensings());
    }
}
