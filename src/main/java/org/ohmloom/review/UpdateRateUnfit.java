package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.signal.channel.UpdateRate;
import org.ohmloom.signal.study.ChannelReading;
import org.ohmloom.signal.study.TrafficMending;

/**
 * A value is sent often enough for how fast it changes, and nothing faster than half the rate reaches its converter.
 * <p>Judged where something about the use of the sensor is entered.
 */
final class UpdateRateUnfit implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "update-rate-unfit",
            "A value is sent too seldom, or a sensor is too slow",
            Severity.WARNING,
            "10/(2 pi tau), common practice, no source; Nyquist's rule",
            "A change between two values is not seen; one faster than half the rate is told as a slow one that is not"
                    + " there.",
            "Send the value more often, take a faster sensor, or filter the input below half the rate.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        TrafficMending mending =
                new TrafficMending(evidence.signals(), evidence.tables().signals());
        for (ChannelReading reading : evidence.signals().channels()) {
            for (UpdateRate.Remark remark : reading.rate().remarks()) {
                report.accept(new FindingDraft(INFO, "{sensor} {words}.")
                        .word("sensor", reading.channel().component().id())
                        .word("words", remark.words())
                        .severity(remark.kind() == UpdateRate.Kind.ALIASED ? Severity.NOTE : Severity.WARNING)
                        .subject(reading.channel().component().id())
                        .fix(mending.rate(reading, remark.kind()))
                        .build());
            }
        }
    }
}
