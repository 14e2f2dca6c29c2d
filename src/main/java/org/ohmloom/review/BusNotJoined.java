package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.signal.bus.wiring.BusProblem;

/**
 * Every node's high pin hangs on the high line and its low pin on the low one, without a ring.
 * <p>Followed over wires, contacts and splices; the line is the one most of the pins are on.
 */
final class BusNotJoined implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "bus-not-joined",
            "The lines of a data bus do not lead where they should",
            Severity.ERROR,
            "ISO 11898-2, bus of two lines (from memory)",
            "A node whose line is open, swapped or shorted does not talk, and may stop all others; a ring has no ends to terminate.",
            "Join the high pins of all nodes with each other, the low pins likewise, in one line without a ring.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        BusFindings.report(evidence, INFO, BusProblem.Topic.JOINING, report);
    }
}
