package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.signal.plan.PlanProblem;

/**
 * Every channel's wires lead to the pins of its plan, and each pin is set up for what is at it.
 * <p>Followed over wires, splices and mated contacts. A pin that reads a resistance has a pull-up, one that reads a voltage has none.
 */
final class ChannelMiswired implements Rule {

    private static final RuleInfo INFO = new RuleInfo("channel-miswired", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        PlanFindings.report(
                evidence,
                INFO,
                Set.of(PlanProblem.Kind.WIRED_ELSEWHERE, PlanProblem.Kind.WRONG_ROLE, PlanProblem.Kind.PULL_UP),
                Set.of(PlanProblem.Kind.WRONG_ROLE, PlanProblem.Kind.PULL_UP),
                report);
    }
}
