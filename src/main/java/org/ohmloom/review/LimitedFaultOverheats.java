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

    private static final RuleInfo INFO = new RuleInfo(
            "limited-fault-overheats",
            "A conductor overheats in a fault its output limits",
            Severity.ERROR,
            "Heating by the RMS current of the limit; IEC 60364-4-43 clause 434.5.2 for each pulse",
            "An electronic output feeds a fault with all its limit allows, for as long as it is on; one that retries by itself"
                    + " heats the wire again and again.",
            "Take a larger conductor, a lower limit, or an output that stays open after a fault.");

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
        FindingDraft draft = new FindingDraft(
                        INFO,
                        "{output} feeds a fault with {amps}{retry}: {wire} ({size}) reaches {celsius}, its limit is {limit}.")
                .word("output", output.output())
                .word("wire", conductor.wire())
                .word("size", conductor.limit().size())
                .word(
                        "retry",
                        output.limit().retrySeconds().isPresent()
                                ? " again and again"
                                : output.limit().tripSeconds().isPresent() ? " until it trips" : " for good")
                .amps("amps", output.limit().limitAmps())
                .value("limit", conductor.limit().continuousCelsius(), Unit.DEGREE_CELSIUS)
                .subject(output.component())
                .subject(conductor.wire());
        return (Double.isFinite(conductor.hottestCelsius())
                        ? draft.value("celsius", conductor.hottestCelsius(), Unit.DEGREE_CELSIUS)
                        : draft.word("celsius", "no end"))
                .build();
    }
}
