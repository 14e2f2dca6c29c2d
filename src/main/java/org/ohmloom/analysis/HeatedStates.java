package org.ohmloom.analysis;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.ohmloom.graph.Network;
import org.ohmloom.heat.WireHeat;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.solve.DcSolver;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.SourceMemory;

/**
 * Operating states solved in turn with the temperatures their currents bring, until both agree ({@link HeatedSolutions}).
 *
 * @param solutions solution of each state
 * @param wireHeat  where each wire settles in each state
 * @param rounds    count of rounds it took
 */
record HeatedStates(
        SortedMap<StateId, Solution> solutions, SortedMap<StateId, SortedMap<WireId, WireHeat>> wireHeat, int rounds) {

    /** Solves from temperatures, deg C, and memories of every state; see {@link HeatedSolutions}. */
    static HeatedStates solve(
            Bench bench,
            ProvisionalSizes sizes,
            SortedMap<StateId, SortedMap<WireId, Double>> start,
            SortedMap<StateId, SourceMemory> memories) {
        WireTemperatures temperatures = new WireTemperatures(bench, sizes);
        SortedMap<StateId, SortedMap<WireId, Double>> celsius = start;
        SortedMap<StateId, Solution> solutions = new TreeMap<>();
        SortedMap<StateId, SortedMap<WireId, Double>> solvedAt = new TreeMap<>();
        for (int round = 1; ; round++) {
            SortedMap<StateId, SortedMap<WireId, Double>> due = new TreeMap<>(celsius);
            due.entrySet()
                    .removeIf(each -> solvedAt.containsKey(each.getKey())
                            && moved(solvedAt.get(each.getKey()), each.getValue())
                                    <= HeatedSolutions.AGREEMENT_CELSIUS);
            solvedAt.putAll(due);
            Map<StateId, Attempt> attempts = due.keySet().parallelStream()
                    .collect(Collectors.toMap(
                            state -> state,
                            state -> Attempt.of(() -> solve(
                                    bench,
                                    sizes,
                                    bench.harness().states().get(state),
                                    due.get(state),
                                    memories.get(state)))));
            attempts.forEach((state, attempt) -> solutions.put(state, attempt.solution()));
            HeatedStates now = new HeatedStates(new TreeMap<>(solutions), temperatures.of(solutions, celsius), round);
            SortedMap<StateId, SortedMap<WireId, Double>> next = now.wireCelsius();
            boolean agreed = next.entrySet().stream()
                    .allMatch(state ->
                            moved(solvedAt.get(state.getKey()), state.getValue()) <= HeatedSolutions.AGREEMENT_CELSIUS);
            if (agreed || round == HeatedSolutions.MOST_ROUNDS) {
                return now;
            }
            celsius = next;
        }
    }

    /** A state solved, or why it was not: whoever hears of it knows that all others have ended, too. */
    private record Attempt(Optional<Solution> solved, Optional<Throwable> failure) {

        static Attempt of(Supplier<Solution> state) {
            try {
                return new Attempt(Optional.of(state.get()), Optional.empty());
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError failed) {
                return new Attempt(Optional.empty(), Optional.of(failed));
            }
        }

        Solution solution() {
            if (failure.isPresent() && failure.get() instanceof Error error) {
                throw error;
            }
            return solved.orElseThrow(() -> (RuntimeException) failure.orElseThrow());
        }
    }

    /** Conductor temperature of each wire in each state, deg C. */
    SortedMap<StateId, SortedMap<WireId, Double>> wireCelsius() {
        SortedMap<StateId, SortedMap<WireId, Double>> celsius = new TreeMap<>();
        wireHeat.forEach((state, heat) -> {
            SortedMap<WireId, Double> ofState = new TreeMap<>();
            heat.forEach((wire, each) -> ofState.put(wire, each.celsius()));
            celsius.put(state, ofState);
        });
        return celsius;
    }

    private static double moved(SortedMap<WireId, Double> before, SortedMap<WireId, Double> after) {
        double moved = 0;
        for (Map.Entry<WireId, Double> wire : after.entrySet()) {
            moved = Math.max(moved, Math.abs(wire.getValue() - before.get(wire.getKey())));
        }
        return moved;
    }

    private static Solution solve(
            Bench bench, ProvisionalSizes sizes, OperatingState state, Map<WireId, Double> warm, SourceMemory memory) {
        bench.cancel().check();
        Network drawn = bench.networks()
                .of(state)
                .withWires(
                        bench.harness(),
                        wire -> bench.ohms(
                                wire, sizes.gauge(wire), HeatedSolutions.held(bench, wire, warm.get(wire.id()))));
        return DcSolver.solve(bench.variation().of(drawn), bench.harness(), memory, bench.cancel()::isRequested);
    }
}
