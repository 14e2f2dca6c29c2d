package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.size.protection.OutputProtection;
import org.ohmloom.units.Unit;

/**
 * A conductor behind an output with an electronic limit stands a lasting fault there.
 * <p>An output that holds its limit heats for good with it; one that trips and tries again by itself heats like limit x
 * sqrt(trip / (trip + retry)), with the rise of each pulse on top.
 */
final class LimitedFaultOverheats implements Rule {

    private static final RuleInfo INFO = new RuleInfo("limited-fault-overheats", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.PROTECTION);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (OutputProtection output : evidence.protection().outputs()) {
            output.burnt().ifPresent(conductor -> report.accept(finding(output, conductor)));
        }
    }

    private static Finding finding(OutputProtection output, OutputProtection.Conductor conductor) {
        FindingDraft draft = new FindingDraft(INFO, "feeds")
                .word("output", output.output())
                .word("wire", conductor.wire())
                .word("size", conductor.limit().size())
                .part("retry", true, retry(output))
                .amps("amps", output.limit().limitAmps())
                .value("limit", conductor.limit().continuousCelsius(), Unit.DEGREE_CELSIUS)
                .subject(output.component())
                .subject(conductor.wire());
        return (Double.isFinite(conductor.hottestCelsius())
                        ? draft.value("celsius", conductor.hottestCelsius(), Unit.DEGREE_CELSIUS)
                        : draft.phrase("celsius", "no-end"))
                .build();
    }

    private static String retry(OutputProtection output) {
        return output.limit().retrySeconds().isPresent()
                ? "again"
                : output.limit().tripSeconds().isPresent() ? "until-it-trips" : "for-good";
    }
}
