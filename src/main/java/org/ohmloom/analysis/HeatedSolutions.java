package org.ohmloom.analysis;

import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.LoadedConductors;
import org.ohmloom.heat.WireHeat;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.SourceMemory;

/**
 * Every operating state solved with its conductors at the temperature their own current and their neighbours bring them to.
 *
 * <p>Solve with the conductors at ambient; from the RMS currents take each wire's temperature by the heat balance of its
 * bundles ({@link WireTemperatures}); solve again with the resistances there ({@link HeatedStates}); stop when no conductor
 * moved by more than {@link #AGREEMENT_CELSIUS}. At most {@link #MOST_ROUNDS} rounds; a conductor beyond its limit is held at it for the
 * resistance, since the harness will not be built like that.
 *
 * @param solutions  solution of each state
 * @param wireHeat   where each wire settles in each state, or gets to in one that does not last
 * @param ampacities ampacity of each wire, where known
 * @param rounds     count of rounds it took
 */
record HeatedSolutions(
        SortedMap<StateId, Solution> solutions,
        SortedMap<StateId, SortedMap<WireId, WireHeat>> wireHeat,
        SortedMap<WireId, Ampacity> ampacities,
        int rounds) {

    /** Largest change of a temperature between rounds that counts as agreement, K. */
    static final double AGREEMENT_CELSIUS = 0.01;

    /** Most rounds. */
    static final int MOST_ROUNDS = 20;

    /** Conductor temperature of each wire in each state, deg C. */
    SortedMap<StateId, SortedMap<WireId, Double>> wireCelsius() {
        return new HeatedStates(solutions, wireHeat, rounds).wireCelsius();
    }

    /** Solves all states with the given sizes for wires that have none. */
    static HeatedSolutions solve(Bench bench, ProvisionalSizes sizes) {
        SortedMap<StateId, SortedMap<WireId, Double>> celsius = new TreeMap<>();
        SortedMap<StateId, SourceMemory> memories = new TreeMap<>();
        for (StateId state : bench.harness().states().ids()) {
            celsius.put(state, ambient(bench));
            memories.put(state, bench.before().take(state));
        }
        try {
            return solve(bench, sizes, celsius, memories);
        } finally {
            memories.forEach(bench.before()::put);
        }
    }

    /**
     * Solves all states, each on a thread of its own where there is one, beginning near what is known.
     *
     * @param bench    the harness and its tables
     * @param sizes    sizes for wires that have none
     * @param start    temperatures of all wires to begin with in every state, deg C
     * @param memories what was left of a solution of every state; takes down what is left of these
     */
    static HeatedSolutions solve(
            Bench bench,
            ProvisionalSizes sizes,
            SortedMap<StateId, SortedMap<WireId, Double>> start,
            SortedMap<StateId, SourceMemory> memories) {
        HeatedStates states = HeatedStates.solve(bench, sizes, start, memories);
        return new HeatedSolutions(
                states.solutions(), states.wireHeat(), ampacities(bench, sizes, states.solutions()), states.rounds());
    }

    private static SortedMap<WireId, Double> ambient(Bench bench) {
        SortedMap<WireId, Double> celsius = new TreeMap<>();
        for (Wire wire : bench.harness().wires().all()) {
            celsius.put(wire.id(), bench.ampacities().ambientCelsius(wire));
        }
        return celsius;
    }

    /** The temperature for the resistance: not beyond what the insulation stands. */
    static double held(Bench bench, Wire wire, double celsius) {
        return bench.ampacities()
                .insulation(wire)
                .map(insulation -> Math.min(celsius, insulation.maximumCelsius()))
                .orElse(celsius);
    }

    private static SortedMap<WireId, Ampacity> ampacities(
            Bench bench, ProvisionalSizes sizes, SortedMap<StateId, Solution> solutions) {
        Map<WireId, Double> worst = new HashMap<>();
        for (StateId state : bench.lasting()) {
            for (Wire wire : bench.harness().wires().all()) {
                bench.cancel().check();
                worst.merge(wire.id(), rmsAmps(solutions.get(state), wire), Math::max);
            }
        }
        LoadedConductors loaded = LoadedConductors.of(bench.harness(), bench.routes(), worst);
        SortedMap<WireId, Ampacity> ampacities = new TreeMap<>();
        for (Wire wire : bench.harness().wires().all()) {
            bench.cancel().check();
            bench.ampacities()
                    .of(wire, sizes.gauge(wire), loaded.alongside(wire))
                    .ifPresent(ampacity -> ampacities.put(wire.id(), ampacity));
        }
        return ampacities;
    }

    /** RMS current of a wire in a solution, A; 0 for a wire whose ends are one point. */
    static double rmsAmps(Solution solution, Wire wire) {
        return solution.flow(new BranchId(wire.id().value()))
                .map(BranchFlow::rmsAmps)
                .orElse(0.0);
    }
}
