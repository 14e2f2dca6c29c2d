package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.signal.plan.PlanProblem;

/**
 * Each input or output serves one sensor, load or coil.
 * <p>By plan and by wires. One output may switch loads that are always on together.
 */
final class PinClash implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "pin-clash",
            "A pin is to serve two things at once",
            Severity.ERROR,
            "Plan and wires as entered in this harness",
            "Two signals on one input mix into a value of neither; a supply or return on the pin of a signal shorts it.",
            "Move one of them to a free pin that can be the same.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        PlanFindings.report(evidence, INFO, Set.of(PlanProblem.Kind.PIN_TWICE), Set.of(), report);
    }
}
