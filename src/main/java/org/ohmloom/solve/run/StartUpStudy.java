package org.ohmloom.solve.run;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Assumption;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.SolveTexts;
import org.ohmloom.tables.WireTables;

/**
 * Follows over time how each load and control unit of a harness starts, in every operating state that has it on: alone
 * while the others run, and all loads of the state together.
 *
 * <p>Every instant is a solution of the whole network of that state with its conductors at the temperature found for it.
 * Outputs that switch at a duty count as on, so the voltages are those of the worst instant. Motors that run follow: they
 * slow down as their voltage sags, and feed nothing back. Relays count as held, and those that would drop out are named.
 *
 * <p>Cost: some fifty solutions for a run. The number of solutions is bounded by {@link #MOST_BRANCH_SOLUTIONS}; what is
 * left out is named in the result. Deterministic: nothing depends on the clock.
 */
public final class StartUpStudy {

    /** Solutions times branches for a whole harness: a few seconds. */
    private static final long MOST_BRANCH_SOLUTIONS = 10_000_000;

    private StartUpStudy() {}

    /**
     * Follows all starts.
     *
     * @param harness   the harness
     * @param solutions the solution of every state
     * @param tables    published tables, for what a load does not state
     * @param cancelled asked now and then; true stops the study
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static StartUps of(
            Harness harness, Map<StateId, Solution> solutions, WireTables tables, BooleanSupplier cancelled) {
        StartDefaults defaults = StartDefaults.of(tables);
        List<StartUp> runs = new ArrayList<>();
        List<SkippedStart> skipped = new ArrayList<>();
        Set<Assumption> assumptions = new LinkedHashSet<>();
        for (OperatingState state : harness.states().all()) {
            Solution solution = solutions.get(state.id());
            if (solution == null || solution.status() == IslandStatus.NO_SOURCE) {
                continue;
            }
            if (solution.status().compareTo(IslandStatus.SINGULAR) >= 0) {
                skipped.add(new SkippedStart(state.id(), List.of(), SolveTexts.text("start.left-no-solution")));
                continue;
            }
            Starters found = new Starters(harness, state, solution, defaults);
            assumptions.addAll(found.assumptions());
            if (!found.found().isEmpty()) {
                long most = MOST_BRANCH_SOLUTIONS
                        / (harness.states().size()
                                * Math.max(1L, solution.network().branches().size()));
                new StateRuns(harness, state, solution, found, most, cancelled).all(runs, skipped);
            }
        }
        return new StartUps(runs, skipped, List.copyOf(assumptions));
    }
}
