package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.signal.bus.wiring.BusProblem;

/**
 * Every node's high pin hangs on the high line and its low pin on the low one, without a ring.
 * <p>Followed over wires, contacts and splices; the line is the one most of the pins are on.
 */
final class BusNotJoined implements Rule {

    private static final RuleInfo INFO = new RuleInfo("bus-not-joined", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        BusFindings.report(evidence, INFO, BusProblem.Topic.JOINING, report);
    }
}
