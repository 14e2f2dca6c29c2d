package org.ohmloom.signal.calibration;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Measurement;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.words.Text;

/**
 * How finely an input tells a value: what one step of its converter, or one pulse more in the time between two values sent, is worth.
 *
 * @param step      the step of the converter, V; of a frequency the step in a second, Hz
 * @param atLowest  what it is worth at the lowest value in use, in the unit of the measurement
 * @param atHighest what it is worth at the highest value in use
 * @param coarsest  the most it is worth in between
 * @param coarsestAt the value where that is
 * @param formula   how it is worked out, in one line
 */
public record Resolution(
        double step, double atLowest, double atHighest, double coarsest, double coarsestAt, Text formula) {

    /** Places a curve is looked at. */
    private static final int PLACES = 101;

    /** A share of the range for finding a slope. */
    private static final double SLOPE_FRACTION = 1e-6;

    /** What one step of a converter is worth over a range; empty where bits, range, pull-up or shunt are not known. */
    static Optional<Resolution> ofConverter(
            CalibrationCurve curve, ConverterInput input, double lowest, double highest) {
        OptionalDouble step = input.stepVolts();
        if (step.isEmpty()
                || input.pinVolts(curve.kind(), curve.signal().applyAsDouble(lowest))
                        .isEmpty()) {
            return Optional.empty();
        }
        List<Double> places = Measurement.spread(lowest, highest, PLACES);
        double[] worth = places.stream()
                .mapToDouble(at -> step.getAsDouble() / slope(curve, input, at, (highest - lowest) * SLOPE_FRACTION))
                .toArray();
        int most = 0;
        for (int k = 1; k < PLACES; k++) {
            most = worth[k] > worth[most] ? k : most;
        }
        return Optional.of(new Resolution(
                step.getAsDouble(),
                worth[0],
                worth[PLACES - 1],
                worth[most],
                places.get(most),
                SignalTexts.text(
                        "resolution.converter",
                        String.valueOf(input.converterBits().orElse(0)))));
    }

    /**
     * What one pulse more is worth where pulses are counted from one value sent to the next.
     *
     * @param curve       a curve of pulses
     * @param updateHertz values sent in a second
     */
    static Resolution ofCounting(CalibrationCurve curve, double updateHertz) {
        double worth = curve.value().applyAsDouble(updateHertz) - curve.value().applyAsDouble(0);
        return new Resolution(
                updateHertz, worth, worth, worth, curve.lowest(), SignalTexts.text("resolution.counting"));
    }

    private static double slope(CalibrationCurve curve, ConverterInput input, double at, double away) {
        return Math.abs(pinVolts(curve, input, at + away) - pinVolts(curve, input, at - away)) / (2 * away);
    }

    private static double pinVolts(CalibrationCurve curve, ConverterInput input, double value) {
        return input.pinVolts(curve.kind(), curve.signal().applyAsDouble(value)).orElse(Double.NaN);
    }
}
