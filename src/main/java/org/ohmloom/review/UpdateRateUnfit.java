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

    private static final RuleInfo INFO = new RuleInfo("update-rate-unfit", Severity.WARNING);

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
                report.accept(new FindingDraft(INFO, "unfit")
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
