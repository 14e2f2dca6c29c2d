package org.ohmloom.analysis;

import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.heat.WireHeat;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.solve.Solution;

/**
 * The temperature of every wire in every operating state.
 *
 * <p>In a state that lasts: the steady heat balance of its bundles under the RMS currents, and where something switches too
 * slowly for the mean square to hold, the peak of the cycle on top. In a state that does not last, such as cranking: the
 * transient from the hottest temperature any lasting state brings the wire to.
 */
final class WireTemperatures {

    private final Bench bench;
    private final ProvisionalSizes sizes;

    WireTemperatures(Bench bench, ProvisionalSizes sizes) {
        this.bench = bench;
        this.sizes = sizes;
    }

    /** Where a wire runs before a short state. */
    private record Running(WireHeat heat, double amps) {}

    /**
     * The temperatures.
     *
     * @param solutions solution of each state
     * @param near      temperatures of an earlier round, deg C
     */
    SortedMap<StateId, SortedMap<WireId, WireHeat>> of(
            SortedMap<StateId, Solution> solutions, SortedMap<StateId, SortedMap<WireId, Double>> near) {
        SortedMap<StateId, SortedMap<WireId, WireHeat>> heat = new TreeMap<>();
        Map<WireId, Running> running = new HashMap<>();
        SortedSet<StateId> lasting = bench.lasting();
        for (StateId state : lasting) {
            SortedMap<WireId, WireHeat> settled = settled(solutions.get(state), near.get(state));
            heat.put(state, settled);
            for (Wire wire : bench.harness().wires().all()) {
                double amps = heatAmps(solutions.get(state), wire);
                running.merge(
                        wire.id(),
                        new Running(settled.get(wire.id()), amps),
                        (one, other) -> other.heat().celsius() > one.heat().celsius() ? other : one);
            }
        }
        for (OperatingState state : bench.harness().states().all()) {
            if (!lasting.contains(state.id())) {
                heat.put(state.id(), passing(state, solutions.get(state.id()), running));
            }
        }
        return heat;
    }

    private SortedMap<WireId, WireHeat> settled(Solution solution, Map<WireId, Double> near) {
        SortedMap<WireId, WireHeat> settled =
                bench.bundleHeat().settle(sizes::gauge, wire -> heatAmps(solution, wire), near, bench.cancel()::check);
        for (Wire wire : bench.harness().wires().all()) {
            bench.cancel().check();
            settled.computeIfPresent(
                    wire.id(), (id, heat) -> SlowCycles.peak(bench, shape(wire), solution, wire, heat));
        }
        return settled;
    }

    private SortedMap<WireId, WireHeat> passing(OperatingState state, Solution solution, Map<WireId, Running> running) {
        SortedMap<WireId, WireHeat> passing = new TreeMap<>();
        double seconds = ContinuousStates.seconds(state);
        for (Wire wire : bench.harness().wires().all()) {
            bench.cancel().check();
            Running before = running.get(wire.id());
            double amps = heatAmps(solution, wire);
            passing.put(wire.id(), bench.passingHeat().after(shape(wire), before.heat(), before.amps(), amps, seconds));
        }
        return passing;
    }

    /** The current that would heat a wire of its table row as much as it is heated, A. */
    private double heatAmps(Solution solution, Wire wire) {
        return HeatedSolutions.rmsAmps(solution, wire)
                * Math.sqrt(bench.variation().heatRatio(wire.id()));
    }

    private RoundWire shape(Wire wire) {
        return bench.ampacities().shape(wire, sizes.gauge(wire)).wire();
    }
}
