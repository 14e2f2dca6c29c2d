package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.signal.plan.PlanProblem;

/**
 * A reference supply, and each group of pins that share a limit, carry no more than that by the plan.
 * <p>Rated currents; of loads that exclude each other only as many as may be on at once.
 */
final class SharedPinOverLimit implements Rule {

    private static final RuleInfo INFO = new RuleInfo("shared-pin-over-limit", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        PlanFindings.report(
                evidence,
                INFO,
                Set.of(PlanProblem.Kind.REFERENCE_OVER_LIMIT, PlanProblem.Kind.GROUP_OVER_LIMIT),
                Set.of(),
                report);
    }
}
