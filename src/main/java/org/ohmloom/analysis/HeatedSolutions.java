package org.ohmloom.analysis;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.heat.LoadedConductors;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.DcSolver;
import org.ohmloom.solve.Solution;

/**
 * Every operating state solved with its conductors at the temperature their own current brings them to.
 * <p>Solve with the conductors at ambient; from the RMS currents, the ampacity and the square law of {@code heat}, take the
 * temperature; solve again with the resistances there; stop when no conductor moved by more than
 * {@link #AGREEMENT_CELSIUS}. In a state that does not last (cranking, a motor at standstill) the conductors stay at
 * ambient. At most {@link #MOST_ROUNDS} rounds; a conductor beyond its limit is held at it for the resistance, since the
 * harness will not be built like that.
 *
 * @param solutions   solution of each state
 * @param wireCelsius conductor temperature of each wire in each state, deg C
 * @param ampacities  ampacity of each wire, where known
 * @param rounds      count of rounds it took
 */
record HeatedSolutions(
        SortedMap<StateId, Solution> solutions,
        SortedMap<StateId, SortedMap<WireId, Double>> wireCelsius,
        SortedMap<WireId, Ampacity> ampacities,
        int rounds) {

    /** Largest change of a temperature between rounds that counts as agreement, K. */
    static final double AGREEMENT_CELSIUS = 0.01;

    /** Most rounds. */
    static final int MOST_ROUNDS = 20;

    /** Solves all states with the given sizes for wires that have none. */
    static HeatedSolutions solve(Bench bench, ProvisionalSizes sizes, Cancel cancel) {
        SortedMap<StateId, SortedMap<WireId, Double>> celsius = new TreeMap<>();
        for (StateId state : bench.harness().states().ids()) {
            celsius.put(state, ambient(bench));
        }
        for (int round = 1; ; round++) {
            SortedMap<StateId, Solution> solutions = solveAll(bench, sizes, celsius, cancel);
            SortedMap<WireId, Ampacity> ampacities = ampacities(bench, sizes, solutions);
            SortedMap<StateId, SortedMap<WireId, Double>> next = new TreeMap<>();
            SortedSet<StateId> lasting = ContinuousStates.of(bench.harness());
            double moved = 0;
            for (OperatingState state : bench.harness().states().all()) {
                SortedMap<WireId, Double> before = celsius.get(state.id());
                SortedMap<WireId, Double> after =
                        lasting.contains(state.id()) ? warmed(bench, ampacities, solutions.get(state.id())) : before;
                for (Map.Entry<WireId, Double> entry : after.entrySet()) {
                    moved = Math.max(moved, Math.abs(entry.getValue() - before.get(entry.getKey())));
                }
                next.put(state.id(), after);
            }
            if (moved <= AGREEMENT_CELSIUS || round == MOST_ROUNDS) {
                return new HeatedSolutions(solutions, next, ampacities, round);
            }
            celsius = next;
        }
    }

    private static SortedMap<WireId, Double> ambient(Bench bench) {
        SortedMap<WireId, Double> celsius = new TreeMap<>();
        for (Wire wire : bench.harness().wires().all()) {
            celsius.put(wire.id(), bench.ampacities().ambientCelsius(wire));
        }
        return celsius;
    }

    private static SortedMap<StateId, Solution> solveAll(
            Bench bench, ProvisionalSizes sizes, SortedMap<StateId, SortedMap<WireId, Double>> celsius, Cancel cancel) {
        Harness harness = bench.harness();
        SortedMap<StateId, Solution> solutions = new TreeMap<>();
        for (OperatingState state : harness.states().all()) {
            cancel.check();
            Map<WireId, Double> warm = celsius.get(state.id());
            Network network = NetworkBuilder.build(
                    harness,
                    state,
                    wire -> bench.ohms(wire, sizes.gauge(wire), held(bench, wire, warm.get(wire.id()))),
                    bench.tables());
            solutions.put(state.id(), DcSolver.solve(network, harness, cancel::isRequested));
        }
        return solutions;
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
        for (StateId state : ContinuousStates.of(bench.harness())) {
            for (Wire wire : bench.harness().wires().all()) {
                worst.merge(wire.id(), rmsAmps(solutions.get(state), wire), Math::max);
            }
        }
        LoadedConductors loaded = LoadedConductors.of(bench.harness(), bench.routes(), worst);
        SortedMap<WireId, Ampacity> ampacities = new TreeMap<>();
        for (Wire wire : bench.harness().wires().all()) {
            bench.ampacities()
                    .of(wire, sizes.gauge(wire), loaded.alongside(wire))
                    .ifPresent(ampacity -> ampacities.put(wire.id(), ampacity));
        }
        return ampacities;
    }

    private static SortedMap<WireId, Double> warmed(
            Bench bench, SortedMap<WireId, Ampacity> ampacities, Solution solution) {
        SortedMap<WireId, Double> celsius = new TreeMap<>();
        for (Wire wire : bench.harness().wires().all()) {
            celsius.put(
                    wire.id(),
                    bench.ampacities()
                            .celsius(wire, Optional.ofNullable(ampacities.get(wire.id())), rmsAmps(solution, wire)));
        }
        return celsius;
    }

    /** RMS current of a wire in a solution, A; 0 for a wire whose ends are one point. */
    static double rmsAmps(Solution solution, Wire wire) {
        return solution.flow(new BranchId(wire.id().value()))
                .map(BranchFlow::rmsAmps)
                .orElse(0.0);
    }
}
