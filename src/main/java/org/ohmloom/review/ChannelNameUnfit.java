package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.signal.plan.PlanProblem;

/**
 * A channel's name has no more characters than its unit takes, and no other channel of its unit or bus has it.
 * <p>Capitals and spaces do not make a name another one.
 */
final class ChannelNameUnfit implements Rule {

    private static final RuleInfo INFO = new RuleInfo("channel-name-unfit", Severity.WARNING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        PlanFindings.report(
                evidence, INFO, Set.of(PlanProblem.Kind.NAME_TOO_LONG, PlanProblem.Kind.NAMES_ALIKE), Set.of(), report);
    }
}
