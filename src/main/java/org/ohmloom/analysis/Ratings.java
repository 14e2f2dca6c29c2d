package org.ohmloom.analysis;

import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.WireRating;
import org.ohmloom.heat.WireTemperature;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Gauge;

/** Gathers for each wire its worst state and what it may carry. */
final class Ratings {

    /** A current has to be more by so much, as a share, for a later state to be the worse one: not by rounding alone. */
    private static final double MORE_RATIO = 1 + 1e-9;

    /** What rounding leaves where nothing flows, A. */
    private static final double NO_AMPS = 1e-12;

    private Ratings() {}

    static SortedMap<WireId, WireRating> of(Bench bench, ProvisionalSizes sizes, HeatedSolutions heated) {
        SortedMap<WireId, WireRating> ratings = new TreeMap<>();
        Temperatures temperatures = new Temperatures(bench, sizes, heated);
        for (Wire wire : bench.harness().wires().all()) {
            bench.cancel().check();
            ratings.put(wire.id(), rating(bench, sizes, heated, temperatures, wire));
        }
        return ratings;
    }

    private static WireRating rating(
            Bench bench, ProvisionalSizes sizes, HeatedSolutions heated, Temperatures temperatures, Wire wire) {
        Gauge gauge = sizes.gauge(wire);
        Optional<StateId> worstState = Optional.empty();
        double worstAmps = 0;
        for (StateId state : bench.lasting()) {
            double amps = HeatedSolutions.rmsAmps(heated.solutions().get(state), wire);
            if (worstState.isEmpty() || amps > worstAmps * MORE_RATIO + NO_AMPS) {
                worstState = Optional.of(state);
                worstAmps = amps;
            }
        }
        Optional<StateId> peakState = worstState;
        double peakAmps = worstAmps;
        for (StateId state : heated.solutions().keySet()) {
            double amps = HeatedSolutions.rmsAmps(heated.solutions().get(state), wire);
            if (amps > peakAmps * MORE_RATIO + NO_AMPS) {
                peakState = Optional.of(state);
                peakAmps = amps;
            }
        }
        double worstDropVolts = 0;
        double worstWatts = 0;
        for (Solution solution : heated.solutions().values()) {
            Optional<BranchFlow> flow = solution.flow(new BranchId(wire.id().value()));
            worstDropVolts = Math.max(
                    worstDropVolts,
                    flow.map(found -> Math.abs(found.onDropVolts())).orElse(0.0));
            worstWatts = Math.max(worstWatts, flow.map(BranchFlow::watts).orElse(0.0));
        }
        WireTemperature temperature = temperatures.of(wire);
        double celsius = temperature.heat().celsius();
        return new WireRating(
                wire,
                gauge,
                wire.gauge().isEmpty(),
                bench.resistance().row(wire, gauge).copperAreaMm2(),
                bench.length(wire),
                bench.ohms(wire, gauge, celsius),
                bench.resistance().citation(wire, gauge),
                worstState,
                worstAmps,
                peakState,
                peakAmps,
                worstDropVolts,
                worstWatts,
                celsius,
                Optional.ofNullable(heated.ampacities().get(wire.id())),
                temperature);
    }
}
