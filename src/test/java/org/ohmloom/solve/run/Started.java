package org.ohmloom.solve.run;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Inrush;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.Setting;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.DcSolver;
import org.ohmloom.solve.Solution;
import org.ohmloom.tables.WireTables;

/** Starts of a sketched harness in one state, with short ways to read them. */
final class Started {

    private static final WireTables TABLES = WireTables.bundled();

    private final StartUps startUps;
    private final StateId state;

    private Started(StartUps startUps, StateId state) {
        this.startUps = startUps;
        this.state = state;
    }

    /** The starts in a state with the engine off in which these loads are asked on. */
    static Started of(HarnessSketch sketch, String... loads) {
        OperatingState state = OperatingState.of("on", "On", EngineMode.OFF);
        for (String load : loads) {
            state = state.with(new ComponentId(load), Setting.ON);
        }
        return of(sketch, state);
    }

    /** The starts in a state. */
    static Started of(HarnessSketch sketch, OperatingState state) {
        Harness harness = sketch.harness().with(state);
        return new Started(StartUpStudy.of(harness, solutions(harness), TABLES, () -> false), state.id());
    }

    /** The solutions of all states. */
    static SortedMap<StateId, Solution> solutions(Harness harness) {
        SortedMap<StateId, Solution> solutions = new TreeMap<>();
        for (OperatingState each : harness.states().all()) {
            Network network = NetworkBuilder.build(
                    harness, each, wire -> wire.measuredOhms().orElseThrow(), TABLES);
            solutions.put(each.id(), DcSolver.solve(network, harness, () -> false));
        }
        return solutions;
    }

    /** A load without anything special. */
    static Load load(Draw draw) {
        return Load.of(draw);
    }

    /** A load with a peak. */
    static Load peak(Draw draw, double peakAmps, double decaySeconds) {
        return new Load(
                draw,
                Load.Control.FEED,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.of(new Inrush(peakAmps, decaySeconds)),
                OptionalDouble.empty());
    }

    /** A load that works from a least voltage on. */
    static Load from(Draw draw, double minimumVolts) {
        return new Load(
                draw,
                Load.Control.FEED,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(minimumVolts));
    }

    StartUps all() {
        return startUps;
    }

    /** The run of one thing alone. */
    StartUp run(String starter) {
        return startUps.run(state, new ComponentId(starter)).orElseThrow();
    }

    /** The run of all together. */
    StartUp together() {
        return startUps.in(state).stream()
                .filter(run -> run.kind() == StartUp.Kind.TOGETHER)
                .findFirst()
                .orElseThrow();
    }

    /** A value of a series by straight lines, as a plot shows it. */
    static double at(StartUp run, List<Double> values, double seconds) {
        List<Double> times = run.seconds();
        int next = 1;
        while (next < times.size() - 1 && times.get(next) < seconds) {
            next++;
        }
        double share = (seconds - times.get(next - 1)) / (times.get(next) - times.get(next - 1));
        return values.get(next - 1) + share * (values.get(next) - values.get(next - 1));
    }

    /** Instants spread over a run. */
    static List<Double> instants(StartUp run, int count) {
        assertTrue(run.durationSeconds() > 0, "the run has a length");
        List<Double> instants = new ArrayList<>();
        for (int each = 0; each <= count; each++) {
            instants.add(run.durationSeconds() * each / count);
        }
        return instants;
    }
}
