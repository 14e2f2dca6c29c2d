package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.signal.bus.wiring.BusProblem;

/**
 * Two resistors of 108 to 132 ohm across the lines, at the ends: no node lies beyond them by more than a stub may be long.
 */
final class BusTermination implements Rule {

    private static final RuleInfo INFO = new RuleInfo("bus-termination", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        BusFindings.report(evidence, INFO, BusProblem.Topic.TERMINATION, report);
    }
}
