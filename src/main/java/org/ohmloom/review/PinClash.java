package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.signal.plan.PlanProblem;

/**
 * Each input or output serves one sensor, load or coil.
 * <p>By plan and by wires. One output may switch loads that are always on together.
 */
final class PinClash implements Rule {

    private static final RuleInfo INFO = new RuleInfo("pin-clash", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        PlanFindings.report(evidence, INFO, Set.of(PlanProblem.Kind.PIN_TWICE), Set.of(), report);
    }
}
