package org.ohmloom.signal.study;

import java.util.Optional;
import org.ohmloom.edit.ChangeDevice;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.calibration.CalibrationProblem;
import org.ohmloom.signal.calibration.SensorCalibration;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.units.Formats;

/**
 * The calibration a sensor's own data give for all it meets in use, where they go that far: a thermistor's formula, a table's rows, a
 * thermocouple's polynomial, pulses of a turn. A straight line through two points is not carried on beyond them.
 */
public final class CalibrationMending {

    private CalibrationMending() {}

    /**
     * Tells the values met in use by the sensor's own curve; empty where that curve does not reach them, or something else would be
     * wrong then.
     *
     * @param reading the channel
     * @param problem what is wrong with it
     * @param rules   what error is allowed where none is entered
     */
    public static Optional<Edit> of(ChannelReading reading, CalibrationProblem problem, ReturnRules rules) {
        SensorChannel channel = reading.channel();
        if (problem.kind() != CalibrationProblem.Kind.RANGE_TOO_SMALL
                || reading.calibration().isEmpty()) {
            return Optional.empty();
        }
        SensorCalibration now = reading.calibration().get();
        Measurement before = channel.measurement().orElseThrow();
        if (!isToldBeyond(before.calibration())) {
            return Optional.empty();
        }
        Measurement over =
                before.over(Math.min(before.lowest(), now.lowest()), Math.max(before.highest(), now.highest()));
        Sensor sensor = channel.sensor().measuring(Optional.of(over));
        boolean mends = SensorCalibration.of(
                        channel.with(sensor), reading.rate().hertz(), rules)
                .filter(then -> then.problems().stream().noneMatch(each -> isNew(each, now)))
                .isPresent();
        String label = "Calibrate " + channel.component().id() + " from " + Formats.number(over.lowest()) + " to "
                + Formats.number(over.highest()) + " " + over.unit() + " by its own curve";
        return mends
                ? Optional.of(new ChangeDevice(
                        label,
                        channel.component().id(),
                        device -> device instanceof Sensor each ? each.measuring(Optional.of(over)) : device))
                : Optional.empty();
    }

    /** Whether something is wrong that is mended by this, or was not wrong before. */
    private static boolean isNew(CalibrationProblem problem, SensorCalibration before) {
        return problem.kind() == CalibrationProblem.Kind.RANGE_TOO_SMALL
                || before.problems().stream().noneMatch(each -> each.kind() == problem.kind());
    }

    private static boolean isToldBeyond(Calibration calibration) {
        return !(calibration instanceof Calibration.RatiometricLine
                || calibration instanceof Calibration.VoltageLine
                || calibration instanceof Calibration.CurrentLine);
    }
}
