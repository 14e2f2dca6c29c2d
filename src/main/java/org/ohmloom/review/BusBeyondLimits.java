package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.signal.bus.wiring.BusProblem;

/**
 * Trunk, each stub, all stubs, nodes and the resistance of the lines stay within the set of limits.
 * <p>Lengths are cut lengths. A bit rate between two rows takes the stricter one. No stub on a stub: a warning.
 */
final class BusBeyondLimits implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "bus-beyond-limits",
            "A data bus is longer, or has more on it, than its bit rate allows",
            Severity.ERROR,
            "Set of limits of the bus; wire-tables/can-limits.csv, wire-tables/can-figures.csv",
            "A bit must reach the far end and be answered within itself, and echoes of stubs must have died by then; a driver serves so much copper and so many receivers.",
            "Lead the trunk past the nodes, take a lower bit rate, a thicker pair, or a set of limits that suits the transceivers.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        BusFindings.report(evidence, INFO, BusProblem.Topic.LIMIT, report);
    }
}
