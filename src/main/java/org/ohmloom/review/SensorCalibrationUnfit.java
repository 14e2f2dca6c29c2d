package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.signal.calibration.CalibrationProblem;
import org.ohmloom.signal.study.ChannelReading;

/**
 * A sensor, its calibration and the input that reads it suit each other and the use.
 * <p>The range covers the use, the curve does not turn back, the signal stays within what the input converts or counts, a share of a
 * supply is read against that supply, and one step of the converter is not worth more than the error allowed.
 */
final class SensorCalibrationUnfit implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "sensor-calibration-unfit",
            "A sensor, its calibration or its input does not suit the use",
            Severity.WARNING,
            "Curves of the sensors as entered; range over 2^bits for a step (textbook)",
            "A value outside the range, or hidden in one step, is not told; one read against another supply is wrong with"
                    + " every volt of it.",
            "Take a sensor of another range, an input that suits it, or correct the calibration.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (ChannelReading reading : evidence.signals().channels()) {
            reading.calibration().ifPresent(calibration -> {
                for (CalibrationProblem problem : calibration.problems()) {
                    report.accept(new FindingDraft(INFO, "{sensor} {words}.")
                            .word("sensor", reading.channel().component().id())
                            .word("words", problem.words())
                            .subject(reading.channel().component().id())
                            .subject(reading.channel().unit().id())
                            .build());
                }
            });
        }
    }
}
