package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.signal.bus.wiring.BusProblem;

/**
 * Both lines are cores of one twisted pair; the shield is there where the set asks for it and grounded at one place.
 */
final class BusPairOpen implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "bus-pair-open",
            "The lines of a data bus do not run as a pair",
            Severity.WARNING,
            "SAE J1939-11, SAE J1939-15: twisted pair",
            "What the surroundings put onto two lines twisted about each other is the same on both and cancels; a shield grounded twice carries current, one grounded nowhere shields nothing.",
            "Make both lines cores of one twisted pair all the way; ground its shield at one place.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        BusFindings.report(evidence, INFO, BusProblem.Topic.PAIR, report);
    }
}
