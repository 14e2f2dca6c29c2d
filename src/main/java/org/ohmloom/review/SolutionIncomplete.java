package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.Island;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.Solution;

/**
 * Every powered part of the network has a solution in every state.
 * <p>No answer is an answer: a load that asks for more than the wiring can bring, a relay that opens its own feed, or
 * two sources that contradict each other will not work on the vehicle either.
 */
final class SolutionIncomplete implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "solution-incomplete",
            "The network has no steady state",
            Severity.ERROR,
            "Kirchhoff's laws",
            "A circuit that has no steady solution will collapse, buzz or trip in the vehicle.",
            "Give the load a heavier feed or another supply; feed a relay's coil from before its own contact.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (OperatingState state : evidence.harness().states().all()) {
            Solution solution = evidence.solutions().get(state.id());
            if (solution == null) {
                continue;
            }
            for (Island island : solution.islands()) {
                if (island.powered() && island.status().compareTo(IslandStatus.SINGULAR) >= 0) {
                    report.accept(new FindingDraft(INFO, "{state}: {sentence}")
                            .word("state", state.name())
                            .word("sentence", island.sentence())
                            .subject(state.id())
                            .subjects(island.cause().stream()
                                    .flatMap(cause -> solution.network().branch(cause).stream())
                                    .flatMap(branch -> branch.element().stream())
                                    .toList())
                            .build());
                }
            }
        }
    }
}
