package org.ohmloom.review;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.solve.charge.BatteryRun;
import org.ohmloom.solve.charge.SequenceRun;
import org.ohmloom.units.Unit;

/**
 * Through a timed sequence no battery comes down to the voltage asked about, nor to nothing.
 * <p>Cranking is left out: it dips for seconds, and {@link SupplyLowWhileStarting} judges what that does.
 */
final class SequenceBelowVoltage implements Rule {

    private static final double SECONDS_PER_MINUTE = 60;

    private static final RuleInfo INFO = new RuleInfo("sequence-below-voltage", Severity.WARNING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.CHARGE);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (SequenceRun run : evidence.charge().sequences()) {
            for (BatteryRun battery : run.batteries()) {
                if (battery.untilMinutes().isPresent()) {
                    report.accept(draft(run, battery, "comes-down")
                            .volts("volts", run.untilVolts().orElse(0))
                            .value("time", battery.untilMinutes().getAsDouble() * SECONDS_PER_MINUTE, Unit.SECOND)
                            .build());
                } else if (battery.emptyMinutes().isPresent()) {
                    report.accept(draft(run, battery, "empty")
                            .value("time", battery.emptyMinutes().getAsDouble() * SECONDS_PER_MINUTE, Unit.SECOND)
                            .build());
                }
            }
        }
    }

    private static FindingDraft draft(SequenceRun run, BatteryRun battery, String template) {
        return new FindingDraft(INFO, template)
                .word("battery", battery.battery())
                .word("name", "'" + run.name() + "'")
                .value("total", run.totalSeconds(), Unit.SECOND)
                .subject(battery.battery())
                .highlight(List.of(run.sequence()));
    }
}
