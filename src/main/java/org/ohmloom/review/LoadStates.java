package org.ohmloom.review;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.Solution;

/** What reaches the terminals of loads in the operating states, and the states in which that is wrong. */
final class LoadStates {

    /** One state in which a load gets the wrong voltage, V. */
    private record Case(OperatingState state, double volts) {}

    /** Voltages nearer to each other are the same, V: of equal states the first is named, whatever rounding left. */
    private static final double SAME_VOLTS = 1e-9;

    private final Component load;
    private final List<Case> cases = new ArrayList<>();

    /** No case yet for a load. */
    LoadStates(Component load) {
        this.load = load;
    }

    /** Adds a state in which the load gets the wrong voltage, V. */
    void add(OperatingState state, double volts) {
        cases.add(new Case(state, volts));
    }

    boolean isEmpty() {
        return cases.isEmpty();
    }

    /** The states. */
    List<StateId> states() {
        return cases.stream().map(each -> each.state().id()).toList();
    }

    /** A finding that names the load, the state with the highest or the lowest voltage, and that voltage. */
    FindingDraft draft(RuleInfo info, String template, boolean highest) {
        DoubleSummaryStatistics volts = cases.stream().mapToDouble(Case::volts).summaryStatistics();
        double extreme = highest ? volts.getMax() : volts.getMin();
        Case worst = cases.stream()
                .filter(each -> Math.abs(each.volts() - extreme) <= SAME_VOLTS)
                .findFirst()
                .orElseThrow();
        return new FindingDraft(info, template)
                .word("name", load.name())
                .word("load", load.id())
                .word("state", StateNames.worstOf(worst.state(), cases.size()))
                .volts("volts", worst.volts())
                .subject(load.id())
                .highlight(states());
    }

    /**
     * On-state voltage at a load's terminals, V: 0 where nothing feeds one of them; empty where the network around it has
     * no solution, which {@link SolutionIncomplete} reports.
     */
    static OptionalDouble volts(Solution solution, ComponentId load) {
        Optional<Branch> branch = solution.network().of(load).stream()
                .filter(each -> each.kind() == BranchKind.LOAD)
                .findFirst();
        if (branch.isEmpty()) {
            return OptionalDouble.of(0);
        }
        if (isUnsolved(solution, branch.get().from())
                || isUnsolved(solution, branch.get().to())) {
            return OptionalDouble.empty();
        }
        boolean known = solution.volts(branch.get().from()).isPresent()
                && solution.volts(branch.get().to()).isPresent();
        return OptionalDouble.of(
                known
                        ? solution.flow(branch.get().id())
                                .map(BranchFlow::onDropVolts)
                                .orElse(0.0)
                        : 0);
    }

    private static boolean isUnsolved(Solution solution, PointId point) {
        String island = solution.islandOf().get(point);
        return solution.islands().stream()
                .anyMatch(each -> each.id().equals(island)
                        && each.powered()
                        && each.status().compareTo(IslandStatus.SINGULAR) >= 0);
    }
}
