package org.ohmloom.ground;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.model.Harness;
import org.ohmloom.solve.DcSolver;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.Solution;

/**
 * RMS currents of one state with a branch open, outputs switching at their duties: a full solution each, and so at most
 * {@link #MOST_SOLUTIONS} of a state.
 */
final class OpenedDuties {

    /** Most solutions of one state. */
    static final int MOST_SOLUTIONS = 25;

    private final Harness harness;
    private final Solution solution;
    private final BooleanSupplier cancelled;
    private int solved;
    private int untried;

    OpenedDuties(Harness harness, Solution solution, BooleanSupplier cancelled) {
        this.harness = harness;
        this.solution = solution;
        this.cancelled = cancelled;
    }

    /** RMS currents with nothing open, A. */
    Map<BranchId, Double> wholeRmsAmps() {
        return rmsAmps(solution);
    }

    /** RMS currents with a branch open, A; empty where nothing switches in the state, or where they cannot be told. */
    Optional<Map<BranchId, Double>> rmsAmps(BranchId opened) {
        if (solution.duty().clocks().isEmpty()) {
            return Optional.empty();
        }
        if (solved == MOST_SOLUTIONS) {
            untried++;
            return Optional.empty();
        }
        solved++;
        Solution without =
                DcSolver.solve(solution.network().withLaws(Map.of(opened, new Law.Open())), harness, cancelled);
        return without.status() == IslandStatus.SOLVED ? Optional.of(rmsAmps(without)) : Optional.empty();
    }

    private static Map<BranchId, Double> rmsAmps(Solution of) {
        Map<BranchId, Double> amps = new HashMap<>();
        of.flows().forEach((branch, flow) -> amps.put(branch, flow.rmsAmps()));
        return amps;
    }

    /** Openings whose overloads are told for all outputs on at once, as there were too many. */
    int untried() {
        return untried;
    }
}
