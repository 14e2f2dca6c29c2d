package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.signal.bus.wiring.BusProblem;

/**
 * Two resistors of 108 to 132 ohm across the lines, at the ends: no node lies beyond them by more than a stub may be long.
 */
final class BusTermination implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "bus-termination",
            "A data bus is not terminated at its two ends",
            Severity.ERROR,
            "ISO 11898-2; SAE J1939-11: 120 ohm at each end",
            "Without a resistor at each end edges come back as echoes; with too many the drivers cannot lift the lines. Both show on a cold day or with one module more.",
            "Put 120 ohm across the lines at each end, none between, and none inside a unit that may be unplugged.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        BusFindings.report(evidence, INFO, BusProblem.Topic.TERMINATION, report);
    }
}
