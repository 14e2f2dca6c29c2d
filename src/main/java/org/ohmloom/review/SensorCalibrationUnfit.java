package org.ohmloom.review;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ComponentId;
import org.ohmloom.signal.calibration.CalibrationProblem;
import org.ohmloom.signal.study.CalibrationMending;
import org.ohmloom.signal.study.ChannelReading;

/**
 * A sensor, its calibration and the input that reads it suit each other and the use.
 * <p>The range covers the use, the curve does not turn back, the signal stays within what the input converts or counts, a share of a
 * supply is read against that supply, and one step of the converter is not worth more than the error allowed. Told once of a sensor,
 * whoever reads it. Where its own curve covers the use, or another input of the unit suits it, that is proposed; else why not is said.
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
        for (ChannelReading reading : evidence.signals().channels()) {
            CalibrationMending mending = new CalibrationMending(evidence.harness(), reading);
            ComponentId sensor = reading.channel().component().id();
            reading.calibration().ifPresent(calibration -> {
                for (CalibrationProblem problem : calibration.problems()) {
                    if (told.add(new Told(sensor, problem.kind()))) {
                        Optional<Edit> fix = mending.of(problem);
                        report.accept(new FindingDraft(INFO, "unfit")
                                .part("why", fix.isEmpty(), word(mending.why(problem)))
                                .word("sensor", sensor)
                                .word("words", problem.words())
                                .word("at", reading.channel().at())
                                .word("unit", reading.channel().unit().id())
                                .subject(sensor)
                                .subject(reading.channel().unit().id())
                                .fix(fix)
                                .build());
                    }
                }
            });
        }
    }

    private static String word(CalibrationMending.Why why) {
        return switch (why) {
            case TWO_POINTS -> "two-points";
            case ROWS -> "rows";
            case OWN_CURVE -> "own-curve";
            case TURNS_BACK -> "turns-back";
            case WIRED -> "wired";
            case LOCKED -> "locked";
            case NO_INPUT -> "no-input";
        };
    }
}
