package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.signal.plan.PlanProblem;

/**
 * A reference supply, and each group of pins that share a limit, carry no more than that by the plan.
 * <p>Rated currents; of loads that exclude each other only as many as may be on at once.
 */
final class SharedPinOverLimit implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "shared-pin-over-limit",
            "A reference supply or a group of outputs carries more than it may",
            Severity.ERROR,
            "Limits of the unit as entered in this harness",
            "A reference supply that is overloaded sags, and with it every sensor on it; outputs over the limit of their driver switch off together.",
            "Spread the sensors over other reference supplies, the loads over outputs of another group, or switch a load by a relay.");

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
