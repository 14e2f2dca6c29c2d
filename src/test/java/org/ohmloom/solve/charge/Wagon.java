package org.ohmloom.solve.charge;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.AlternatorModel;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BatteryModel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.SequenceId;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SourceSetting;
import org.ohmloom.model.StateId;
import org.ohmloom.model.StateSequence;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.solve.DcSolver;
import org.ohmloom.solve.Solution;
import org.ohmloom.tables.WireTables;

/**
 * An invented wagon: an AGM battery BAT1 of 60 Ah, 5 mohm and 12.84 V, an alternator ALT1 of 14.4 V and 60 A that senses at the
 * battery over a cable of 10 mohm, and loads of constant current at the battery's terminals.
 */
final class Wagon {
    static final WireTables TABLES = WireTables.bundled();
    static final ComponentId BATTERY = new ComponentId("BAT1");
    static final ComponentId ALTERNATOR = new ComponentId("ALT1");

    private final HarnessSketch sketch = new HarnessSketch();

    Wagon() {
        AlternatorModel senses = new AlternatorModel(
                Optional.of(new WireEnd.AtTerminal(BATTERY, "+")),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(),
                new TreeMap<>(Map.of(EngineMode.IDLING, 30.0)),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        sketch.component("BAT1", new Battery(12.84, 0.005, 60, Optional.of(BatteryModel.of("lead-acid-agm"))))
                .component("ALT1", new Alternator(14.4, 0.01, 60, Optional.of(senses)))
                .wire("WA", "ALT1.+", "BAT1.+", 0.01)
                .wire("WB", "ALT1.-", "BAT1.-", 1e-6);
    }

    /** A load of constant current at the battery. */
    Wagon load(String id, double amps) {
        return load(id, new Load(new Draw.ConstantCurrent(amps, 12), Load.Control.COMMAND, OptionalDouble.empty()));
    }

    Wagon load(String id, Load load) {
        sketch.component(id, load).wire("W" + id, id + ".+", "BAT1.+", 1e-6).wire("V" + id, id + ".-", "BAT1.-", 1e-6);
        return this;
    }

    Wagon with(OperatingState... states) {
        for (OperatingState state : states) {
            sketch.with(state);
        }
        return this;
    }

    Wagon sequence(double untilVolts, StateSequence.Step... steps) {
        sketch.with(new StateSequence(new SequenceId("Q1"), "A day", List.of(steps), OptionalDouble.of(untilVolts)));
        return this;
    }

    /** A state at 25 deg C with the battery at a charge level and loads on. */
    static OperatingState state(String id, EngineMode mode, double chargeFraction, String... loads) {
        OperatingState state = OperatingState.of(id, id, mode)
                .withSource(
                        BATTERY,
                        SourceSetting.ON.withChargeFraction(chargeFraction).withCelsius(25))
                .withSource(ALTERNATOR, mode == EngineMode.IDLING || mode == EngineMode.RUNNING);
        for (String load : loads) {
            state = state.with(new ComponentId(load), Setting.ON);
        }
        return state;
    }

    Harness harness() {
        return sketch.harness();
    }

    ChargeStudy study() {
        Harness harness = harness();
        Map<StateId, Solution> solutions = new TreeMap<>();
        for (OperatingState state : harness.states().all()) {
            solutions.put(
                    state.id(),
                    DcSolver.solve(NetworkBuilder.build(harness, state, Wagon::ohms, TABLES), harness, () -> false));
        }
        return ChargeStudy.of(harness, TABLES, solutions, () -> false);
    }

    private static double ohms(Wire wire) {
        return wire.measuredOhms().orElseThrow();
    }
}
