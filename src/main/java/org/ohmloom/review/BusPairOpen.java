package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.signal.bus.wiring.BusProblem;

/**
 * Both lines are cores of one twisted pair; the shield is there where the set asks for it and grounded at one place.
 */
final class BusPairOpen implements Rule {

    private static final RuleInfo INFO = new RuleInfo("bus-pair-open", Severity.WARNING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        BusFindings.report(evidence, INFO, BusProblem.Topic.PAIR, report);
    }
}
