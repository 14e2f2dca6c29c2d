package org.ohmloom.signal.study;

import java.util.Optional;
import org.ohmloom.edit.ChangeDevice;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.signal.calibration.CalibrationProblem;
import org.ohmloom.signal.calibration.SensorCalibration;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * What mends a calibration that does not suit. Where more is met in use than it tells, the sensor's own data give it as far as they go: a
 * thermistor's formula, a table's rows, a thermocouple's polynomial, pulses of a turn; a straight line through two points is not carried
 * on beyond them. Where the input does not suit, another of its unit may.
 */
public final class CalibrationMending {
    /** Why nothing mends it. */
    public enum Why {
        /** Two points tell nothing beyond them. */
        TWO_POINTS,
        /** A table tells nothing beyond its rows. */
        ROWS,
        /** The sensor's own curve does not serve there. */
        OWN_CURVE,
        /** Which of two values it is cannot be told from one signal. */
        TURNS_BACK,
        /** It is wired to its input. */
        WIRED,
        /** It is locked to its input. */
        LOCKED,
        /** No free input of the unit suits it better. */
        NO_INPUT
    }

    private final Harness harness;
    private final ChannelReading reading;
    private final ReturnRules rules;

    /** For a channel of a harness. */
    public CalibrationMending(Harness harness, ChannelReading reading) {
        this.harness = harness;
        this.reading = reading;
        this.rules = harness.rules().returnRules();
    }

    /** The change that mends a problem and makes no other; empty without one: {@link #why} tells why. */
    public Optional<Edit> of(CalibrationProblem problem) {
        return problem.kind() == CalibrationProblem.Kind.RANGE_TOO_SMALL
                ? reading.calibration().flatMap(this::byOwnCurve)
                : reading.calibration()
                        .flatMap(now ->
                                OtherInput.of(harness, reading.channel(), pin -> mends(pin, problem.kind(), now)));
    }

    /** Tells the values met in use by the sensor's own curve; empty where that curve does not reach them. */
    private Optional<Edit> byOwnCurve(SensorCalibration now) {
        SensorChannel channel = reading.channel();
        Measurement before = channel.measurement().orElseThrow();
        if (SensorCalibration.isLine(before.calibration())) {
            return Optional.empty();
        }
        Measurement over =
                before.over(Math.min(before.lowest(), now.lowest()), Math.max(before.highest(), now.highest()));
        Text label = SignalTexts.text(
                "calibrate",
                channel.component().id(),
                Formats.number(over.lowest()),
                Formats.number(over.highest()) + " " + over.unit());
        return mends(
                        channel.with(channel.sensor().measuring(Optional.of(over))),
                        CalibrationProblem.Kind.RANGE_TOO_SMALL,
                        now)
                ? Optional.of(new ChangeDevice(
                        label,
                        channel.component().id(),
                        device -> device instanceof Sensor each ? each.measuring(Optional.of(over)) : device))
                : Optional.empty();
    }

    /** Whether a problem of a kind is gone in a changed channel, and nothing is wrong there that was not before. */
    private boolean mends(SensorChannel changed, CalibrationProblem.Kind kind, SensorCalibration now) {
        return SensorCalibration.of(changed, reading.rate().hertz(), rules)
                .filter(then -> then.problems().stream()
                        .noneMatch(each -> each.kind() == kind
                                || now.problems().stream().noneMatch(known -> known.kind() == each.kind())))
                .isPresent();
    }

    /** Why a problem has no change that mends it. */
    public Why why(CalibrationProblem problem) {
        Calibration calibration =
                reading.channel().measurement().map(Measurement::calibration).orElseThrow();
        if (problem.kind() == CalibrationProblem.Kind.NOT_MONOTONE) {
            return Why.TURNS_BACK;
        }
        if (problem.kind() != CalibrationProblem.Kind.RANGE_TOO_SMALL) {
            return OtherInput.why(reading.channel());
        }
        if (SensorCalibration.isLine(calibration)) {
            return Why.TWO_POINTS;
        }
        return calibration instanceof Calibration.ResistanceTable || calibration instanceof Calibration.VoltageTable
                ? Why.ROWS
                : Why.OWN_CURVE;
    }
}
