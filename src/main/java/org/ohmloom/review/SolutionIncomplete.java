package org.ohmloom.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.ohmloom.graph.Branch;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.Island;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.Solution;
import org.ohmloom.words.Text;

/**
 * Every powered part of the network has a solution in every state.
 * <p>No answer is an answer: a load that asks for more than the wiring can bring, a relay that opens its own feed, or
 * two sources that contradict each other will not work on the vehicle either. Reported once for a cause, with the first
 * state it shows in.
 */
final class SolutionIncomplete implements Rule {

    private static final RuleInfo INFO = new RuleInfo("solution-incomplete", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    /** One cause, with the first state it shows in. */
    private record Case(OperatingState first, Text told, List<StateId> states) {}

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        SortedMap<String, Case> cases = new TreeMap<>(NaturalOrder.INSTANCE);
        for (OperatingState state : evidence.harness().states().all()) {
            Solution solution = evidence.solutions().get(state.id());
            if (solution == null) {
                continue;
            }
            for (Island island : solution.islands()) {
                if (island.powered() && island.status().compareTo(IslandStatus.SINGULAR) >= 0) {
                    String subject = cause(solution, island).orElse(state.id().value());
                    cases.computeIfAbsent(subject, key -> new Case(state, island.told(), new ArrayList<>()))
                            .states()
                            .add(state.id());
                }
            }
        }
        cases.forEach((subject, found) -> report.accept(finding(subject, found)));
    }

    private static Optional<String> cause(Solution solution, Island island) {
        return island.cause()
                .flatMap(cause -> solution.network().branch(cause))
                .flatMap(Branch::element)
                .map(ElementId::value);
    }

    private static Finding finding(String subject, Case found) {
        return new FindingDraft(INFO, "unsolved")
                .word("state", StateNames.worstOf(found.first(), found.states().size()))
                .word("sentence", found.told())
                .subject(subject)
                .highlight(found.states())
                .build();
    }
}
