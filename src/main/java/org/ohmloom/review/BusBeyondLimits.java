package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.signal.bus.wiring.BusProblem;

/**
 * Trunk, each stub, all stubs, nodes and the resistance of the lines stay within the set of limits.
 * <p>Lengths are cut lengths. A bit rate between two rows takes the stricter one. No stub on a stub: a warning.
 */
final class BusBeyondLimits implements Rule {

    private static final RuleInfo INFO = new RuleInfo("bus-beyond-limits", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        BusFindings.report(evidence, INFO, BusProblem.Topic.LIMIT, report);
    }
}
