package org.ohmloom.signal.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.VoltageCurve;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.units.Formats;

/**
 * The calibration of a channel: its curve, what its input makes of it, how finely that tells it, and what is wrong with it.
 *
 * @param channel    the channel
 * @param curve      the curve; empty for a contact, and for pulses of which no rate is known
 * @param input      what its input makes of it
 * @param lowest     lowest value in use, in the unit of the measurement
 * @param highest    highest value in use
 * @param resolution how finely its input tells it, if known
 * @param problems   what is wrong
 */
public record SensorCalibration(
        SensorChannel channel,
        Optional<CalibrationCurve> curve,
        ConverterInput input,
        double lowest,
        double highest,
        Optional<Resolution> resolution,
        List<CalibrationProblem> problems) {

    /** Values printed of a straight line, of a curve, and looked at for turning back. */
    private static final int OF_LINE = 5, OF_CURVE = 13, LOOKED_AT = 201;

    /** Voltages at the very end of a range are inside it but for rounding, V. */
    private static final double NOISE_VOLTS = 1e-9;

    public SensorCalibration {
        problems = List.copyOf(problems);
    }

    /**
     * The calibration of a channel; empty where what the sensor measures is not entered.
     *
     * @param channel     the channel
     * @param updateHertz values sent in a second, for pulses that are counted, if known
     * @param rules       what error is allowed where none is entered
     */
    public static Optional<SensorCalibration> of(SensorChannel channel, OptionalDouble updateHertz, ReturnRules rules) {
        return channel.measurement().map(measurement -> of(channel, measurement, updateHertz, rules));
    }

    private static SensorCalibration of(
            SensorChannel channel, Measurement measurement, OptionalDouble updateHertz, ReturnRules rules) {
        double lowest = measurement
                .use()
                .map(Measurement.Use::lowest)
                .orElse(OptionalDouble.empty())
                .orElse(measurement.lowest());
        double highest = measurement
                .use()
                .map(Measurement.Use::highest)
                .orElse(OptionalDouble.empty())
                .orElse(measurement.highest());
        ConverterInput input = ConverterInput.of(channel.pin(), channel.referenceVolts());
        Optional<CalibrationCurve> curve = CalibrationCurve.of(measurement, channel.referenceVolts());
        Optional<Resolution> resolution = curve.flatMap(each -> each.kind() == SignalKind.FREQUENCY
                ? updateHertz.stream()
                        .mapToObj(hertz -> Resolution.ofCounting(each, hertz))
                        .findFirst()
                : Resolution.ofConverter(each, input, lowest, highest));
        List<CalibrationProblem> problems = new ArrayList<>();
        curve.ifPresent(each -> {
            range(measurement, each, lowest, highest, problems);
            monotone(each, lowest, highest, problems);
            boolean told = isLine(measurement.calibration());
            beyond(
                    each,
                    input,
                    told ? Math.max(lowest, each.lowest()) : lowest,
                    told ? Math.min(highest, each.highest()) : highest,
                    problems);
        });
        supply(channel, measurement.calibration(), input, problems);
        resolution.ifPresent(each -> coarse(measurement, curve.orElseThrow(), each, rules, problems));
        return new SensorCalibration(channel, curve, input, lowest, highest, resolution, problems);
    }

    /** The rows of its sheet: those of its own table, else evenly apart over the use. */
    public List<CurvePoint> points() {
        return curve.map(each -> {
                    List<Double> values = each.rows().isEmpty() ? spread(isLine() ? OF_LINE : OF_CURVE) : each.rows();
                    return values.stream().map(value -> point(each, value)).toList();
                })
                .orElse(List.of());
    }

    /** Values over the use, its ends among them, evenly apart. */
    public List<Double> spread(int count) {
        return Measurement.spread(lowest, highest, count);
    }

    /** What it gives at a value. */
    private CurvePoint point(CalibrationCurve of, double value) {
        double signal = of.signal().applyAsDouble(value);
        return new CurvePoint(value, signal, input.pinVolts(of.kind(), signal));
    }

    /**
     * What is typed into a unit that asks for values by voltage: the ends of a straight line, else voltages at the pin evenly apart over
     * the use. Empty where no voltage is known at the pin.
     */
    public List<CurvePoint> byVoltage() {
        List<CurvePoint> points = points();
        if (points.isEmpty() || points.stream().anyMatch(each -> each.pinVolts().isEmpty())) {
            return List.of();
        }
        double first = points.get(0).pinVolts().getAsDouble();
        double last = points.get(points.size() - 1).pinVolts().getAsDouble();
        SignalKind kind = curve.orElseThrow().kind();
        List<CurvePoint> rows = new ArrayList<>();
        for (double volts : Measurement.spread(Math.min(first, last), Math.max(first, last), isLine() ? 2 : OF_CURVE)) {
            valueAt(volts)
                    .ifPresent(value -> rows.add(
                            new CurvePoint(value, input.signal(kind, volts).orElseThrow(), OptionalDouble.of(volts))));
        }
        return rows;
    }

    /** The value a voltage at the pin stands for; empty where none does. */
    private OptionalDouble valueAt(double pinVolts) {
        if (curve.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble signal = input.signal(curve.get().kind(), pinVolts);
        return signal.isPresent() ? OptionalDouble.of(curve.get().value().applyAsDouble(signal.getAsDouble())) : signal;
    }

    private boolean isLine() {
        Calibration calibration = channel.measurement().orElseThrow().calibration();
        return isLine(calibration) || calibration instanceof Calibration.PulseLevels;
    }

    /** Whether two points are all that is known of it: what it gives beyond them nobody knows. */
    public static boolean isLine(Calibration calibration) {
        return calibration instanceof Calibration.RatiometricLine
                || calibration instanceof Calibration.VoltageLine
                || calibration instanceof Calibration.CurrentLine;
    }

    private static String span(double low, double high, String unit) {
        return Formats.number(low) + " to " + Formats.number(high) + " " + unit;
    }

    private static void range(
            Measurement of, CalibrationCurve curve, double lowest, double highest, List<CalibrationProblem> problems) {
        double low = Math.max(of.lowest(), curve.lowest());
        double high = Math.min(of.highest(), curve.highest());
        if (lowest < low || highest > high) {
            problems.add(new CalibrationProblem(
                    CalibrationProblem.Kind.RANGE_TOO_SMALL,
                    SignalTexts.text(
                            "calibration.range", span(lowest, highest, of.unit()), span(low, high, of.unit()))));
        }
    }

    private static void monotone(
            CalibrationCurve curve, double lowest, double highest, List<CalibrationProblem> problems) {
        double way = curve.signal().applyAsDouble(highest) - curve.signal().applyAsDouble(lowest);
        double before = curve.signal().applyAsDouble(lowest);
        for (double value : Measurement.spread(lowest, highest, LOOKED_AT).subList(1, LOOKED_AT)) {
            double here = curve.signal().applyAsDouble(value);
            if (!((here - before) * way > 0)) {
                problems.add(new CalibrationProblem(
                        CalibrationProblem.Kind.NOT_MONOTONE,
                        SignalTexts.text(
                                "calibration.same-signal",
                                Formats.number(value),
                                Formats.quantity(here, curve.kind().dimension()))));
                return;
            }
            before = here;
        }
    }

    private static void beyond(
            CalibrationCurve curve,
            ConverterInput input,
            double lowest,
            double highest,
            List<CalibrationProblem> problems) {
        double one = curve.signal().applyAsDouble(lowest);
        double other = curve.signal().applyAsDouble(highest);
        if (curve.kind() == SignalKind.FREQUENCY) {
            double most = Math.max(one, other);
            if (input.highestHertz().isPresent() && most > input.highestHertz().getAsDouble()) {
                problems.add(beyond(
                        Formats.hertz(most),
                        Formats.hertz(input.highestHertz().getAsDouble()),
                        "calibration.takes-at-most"));
            }
            double least = Math.min(one, other);
            if (least > 0
                    && input.lowestHertz().isPresent()
                    && least < input.lowestHertz().getAsDouble()) {
                problems.add(beyond(
                        Formats.hertz(least),
                        Formats.hertz(input.lowestHertz().getAsDouble()),
                        "calibration.takes-at-least"));
            }
            return;
        }
        OptionalDouble first = input.pinVolts(curve.kind(), one);
        OptionalDouble second = input.pinVolts(curve.kind(), other);
        if (first.isEmpty() || second.isEmpty()) {
            return;
        }
        double most = Math.max(first.getAsDouble(), second.getAsDouble());
        if (input.highestVolts().isPresent() && most > input.highestVolts().getAsDouble() + NOISE_VOLTS) {
            problems.add(beyond(
                    Formats.volts(most),
                    Formats.volts(input.highestVolts().getAsDouble()),
                    "calibration.takes-at-most"));
        }
        double least = Math.min(first.getAsDouble(), second.getAsDouble());
        if (input.highestVolts().isPresent() && least < input.lowestVolts() - NOISE_VOLTS) {
            problems.add(
                    beyond(Formats.volts(least), Formats.volts(input.lowestVolts()), "calibration.takes-at-least"));
        }
    }

    private static CalibrationProblem beyond(String given, String limit, String side) {
        return new CalibrationProblem(CalibrationProblem.Kind.BEYOND_INPUT, SignalTexts.text(side, given, limit));
    }

    /** A share of the supply is told right by a converter that goes by that very supply. */
    private static void supply(
            SensorChannel channel, Calibration calibration, ConverterInput input, List<CalibrationProblem> problems) {
        boolean share = calibration instanceof Calibration.RatiometricLine
                || calibration instanceof VoltageCurve curve
                        && curve.supplyVolts().isPresent();
        if (!share || !channel.supplied()) {
            return;
        }
        if (channel.fedBy().isEmpty()) {
            problems.add(new CalibrationProblem(
                    CalibrationProblem.Kind.OTHER_SUPPLY,
                    SignalTexts.text("calibration.other-supply", channel.unit().id())));
        } else if (input.ratiometric().isPresent() && !input.ratiometric().get()) {
            problems.add(new CalibrationProblem(
                    CalibrationProblem.Kind.OTHER_SUPPLY, SignalTexts.text("calibration.own-voltage", channel.at())));
        }
    }

    private static void coarse(
            Measurement of,
            CalibrationCurve curve,
            Resolution resolution,
            ReturnRules rules,
            List<CalibrationProblem> problems) {
        double allowed = of.allowedError().orElse(rules.sensorErrorShare() * of.span());
        if (curve.kind() != SignalKind.FREQUENCY && resolution.coarsest() > allowed) {
            problems.add(new CalibrationProblem(
                    CalibrationProblem.Kind.TOO_COARSE,
                    SignalTexts.text(
                            "calibration.coarse",
                            Formats.number(resolution.coarsest()) + " " + of.unit(),
                            Formats.number(resolution.coarsestAt()) + " " + of.unit(),
                            Formats.number(allowed) + " " + of.unit())));
        }
    }
}
