package org.ohmloom.size;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;

/** The largest RMS current of every branch over the operating states that last. */
final class WorstCurrents {

    /**
     * The largest current of something.
     *
     * @param amps  RMS current, A, 0 or more
     * @param state the state it flows in; empty when nothing flows in any
     */
    record Worst(double amps, Optional<StateId> state) {
        static final Worst NONE = new Worst(0, Optional.empty());

        /** More by less than this share is the same: ties go to the earlier state, not to rounding. */
        private static final double MORE_RATIO = 1 + 1e-9;

        /** What rounding leaves where nothing flows, A. */
        private static final double NO_AMPS = 1e-12;

        Worst larger(Worst other) {
            return other.amps > amps * MORE_RATIO + NO_AMPS ? other : this;
        }
    }

    private final Map<BranchId, Worst> byBranch = new HashMap<>();
    private final Map<ComponentId, Worst> byComponent = new HashMap<>();

    WorstCurrents(SortedMap<StateId, Solution> solutions, Set<StateId> counted) {
        solutions.forEach((state, solution) -> {
            if (counted.contains(state)) {
                solution.flows().values().forEach(flow -> add(state, flow));
            }
        });
    }

    private void add(StateId state, BranchFlow flow) {
        Worst worst = new Worst(Math.abs(flow.rmsAmps()), Optional.of(state));
        byBranch.merge(flow.branch().id(), worst, Worst::larger);
        flow.branch()
                .element()
                .filter(ComponentId.class::isInstance)
                .ifPresent(id -> byComponent.merge((ComponentId) id, worst, Worst::larger));
    }

    Worst of(WireId wire) {
        return byBranch.getOrDefault(new BranchId(wire.value()), Worst.NONE);
    }

    Worst of(ComponentId component) {
        return byComponent.getOrDefault(component, Worst.NONE);
    }
}
