package org.ohmloom.review;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.signal.calibration.CalibrationProblem;
import org.ohmloom.signal.study.CalibrationMending;
import org.ohmloom.signal.study.ChannelReading;

/**
 * A sensor, its calibration and the input that reads it suit each other and the use.
 * <p>The range covers the use, the curve does not turn back, the signal stays within what the input converts or counts, a share of a
 * supply is read against that supply, and one step of the converter is not worth more than the error allowed. Told once of a sensor,
 * whoever reads it; where its own curve covers the use, that is proposed.
 */
final class SensorCalibrationUnfit implements Rule {

    private static final RuleInfo INFO = new RuleInfo("sensor-calibration-unfit", Severity.WARNING);

    /** What is told of a sensor: once, however many inputs read it. */
    private record Told(ComponentId sensor, CalibrationProblem.Kind kind) {}

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        Set<Told> told = new HashSet<>();
        ReturnRules rules = evidence.harness().rules().returnRules();
        for (ChannelReading reading : evidence.signals().channels()) {
            ComponentId sensor = reading.channel().component().id();
            reading.calibration().ifPresent(calibration -> {
                for (CalibrationProblem problem : calibration.problems()) {
                    if (told.add(new Told(sensor, problem.kind()))) {
                        report.accept(new FindingDraft(INFO, "unfit")
                                .word("sensor", sensor)
                                .word("words", problem.words())
                                .subject(sensor)
                                .subject(reading.channel().unit().id())
                                .fix(CalibrationMending.of(reading, problem, rules))
                                .build());
                    }
                }
            });
        }
    }
}
