package org.ohmloom.signal.calibration;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.ResistanceCurve;
import org.ohmloom.model.ThermocoupleVolts;
import org.ohmloom.model.VoltageCurve;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * What a sensor gives for what it measures, and back: V, ohm, A or Hz by its {@link SignalKind}.
 *
 * @param kind    what it gives
 * @param signal  what it gives at a value
 * @param value   the value at what it gives
 * @param lowest  lowest value it is told for, in the unit of the measurement
 * @param highest highest value it is told for
 * @param formula how it is worked out, in one line
 * @param source  where the formula is from
 * @param rows    values its own table is told for; empty without a table
 */
public record CalibrationCurve(
        SignalKind kind,
        DoubleUnaryOperator signal,
        DoubleUnaryOperator value,
        double lowest,
        double highest,
        Text formula,
        Text source,
        List<Double> rows) {

    private static final Text LINE = SignalTexts.text("curve.source.line");
    private static final Text TABLE = SignalTexts.text("curve.source.table");
    private static final Text THERMOCOUPLE = SignalTexts.text("curve.source.thermocouple");

    public CalibrationCurve {
        rows = List.copyOf(rows);
    }

    /**
     * The curve of a measurement; empty for a contact, and for pulses of which no rate is known.
     *
     * @param measurement  the measurement
     * @param nominalVolts nominal supply of a sensor that gives a share of it, V; empty takes that of its table, else 5 V
     */
    public static Optional<CalibrationCurve> of(Measurement measurement, OptionalDouble nominalVolts) {
        Calibration calibration = measurement.calibration();
        if (calibration instanceof Calibration.RatiometricLine line) {
            double supply = nominalVolts.orElse(USUAL_SUPPLY_VOLTS);
            return Optional.of(line(
                    measurement,
                    SignalKind.SHARE_OF_SUPPLY,
                    line.lowFraction() * supply,
                    line.highFraction() * supply,
                    SignalTexts.text(
                            "curve.share",
                            Formats.percent(line.lowFraction()),
                            Formats.percent(line.highFraction()),
                            Formats.volts(supply))));
        }
        if (calibration instanceof Calibration.VoltageLine line) {
            return Optional.of(line(
                    measurement,
                    SignalKind.VOLTAGE,
                    line.lowVolts(),
                    line.highVolts(),
                    SignalTexts.text("curve.span", Formats.volts(line.lowVolts()), Formats.volts(line.highVolts()))));
        }
        if (calibration instanceof Calibration.CurrentLine line) {
            return Optional.of(line(
                    measurement,
                    SignalKind.CURRENT,
                    line.lowAmps(),
                    line.highAmps(),
                    SignalTexts.text("curve.span", Formats.amps(line.lowAmps()), Formats.amps(line.highAmps()))));
        }
        if (calibration instanceof ResistanceCurve curve) {
            return Optional.of(resistance(measurement, curve));
        }
        if (calibration instanceof VoltageCurve curve) {
            return Optional.of(voltage(measurement, curve, nominalVolts));
        }
        if (calibration instanceof Calibration.Thermocouple) {
            return Optional.of(new CalibrationCurve(
                    SignalKind.VOLTAGE,
                    ThermocoupleVolts::volts,
                    ThermocoupleVolts::celsius,
                    ThermocoupleVolts.LOWEST_CELSIUS,
                    ThermocoupleVolts.HIGHEST_CELSIUS,
                    SignalTexts.text("curve.thermocouple"),
                    THERMOCOUPLE,
                    List.of()));
        }
        return calibration instanceof Calibration.PulseLevels pulses ? pulses(measurement, pulses) : Optional.empty();
    }

    /** Supply of a ratiometric sensor where none is entered, V: common practice, no source. */
    public static final double USUAL_SUPPLY_VOLTS = 5;

    private static CalibrationCurve line(Measurement of, SignalKind kind, double low, double high, Text words) {
        return new CalibrationCurve(
                kind,
                value -> low + (value - of.lowest()) / of.span() * (high - low),
                signal -> of.lowest() + (signal - low) / (high - low) * of.span(),
                of.lowest(),
                of.highest(),
                SignalTexts.text(
                        "curve.over", words, Formats.number(of.lowest()), Formats.number(of.highest()), of.unit()),
                LINE,
                List.of());
    }

    private static CalibrationCurve resistance(Measurement of, ResistanceCurve curve) {
        if (curve instanceof Calibration.ResistanceTable table) {
            List<Double> rows = table.points().stream()
                    .map(Calibration.ResistancePoint::value)
                    .toList();
            return new CalibrationCurve(
                    SignalKind.RESISTANCE,
                    curve::ohms,
                    curve::value,
                    rows.get(0),
                    rows.get(rows.size() - 1),
                    SignalTexts.text("curve.rows", String.valueOf(rows.size())),
                    TABLE,
                    rows);
        }
        boolean beta = curve instanceof Calibration.Beta;
        return new CalibrationCurve(
                SignalKind.RESISTANCE,
                curve::ohms,
                curve::value,
                of.lowest(),
                of.highest(),
                Text.of(beta ? words((Calibration.Beta) curve) : words((Calibration.SteinhartHart) curve)),
                SignalTexts.text(beta ? "curve.source.beta" : "curve.source.steinhart"),
                List.of());
    }

    private static String words(Calibration.Beta beta) {
        return "R = " + Formats.ohms(beta.referenceOhms()) + " exp(" + Formats.number(beta.betaKelvin())
                + " K (1/T - 1/T0)), T0 = " + Formats.celsius(beta.referenceCelsius());
    }

    private static String words(Calibration.SteinhartHart curve) {
        return "1/T = " + curve.a() + " + " + curve.b() + " ln R + " + curve.c() + " (ln R)^3";
    }

    private static CalibrationCurve voltage(Measurement of, VoltageCurve curve, OptionalDouble nominalVolts) {
        double follow = curve.supplyVolts().isPresent()
                ? nominalVolts.orElse(curve.supplyVolts().getAsDouble())
                        / curve.supplyVolts().getAsDouble()
                : 1;
        SignalKind kind = curve.supplyVolts().isPresent() ? SignalKind.SHARE_OF_SUPPLY : SignalKind.VOLTAGE;
        if (curve instanceof Calibration.VoltageTable table) {
            List<Double> rows =
                    table.points().stream().map(Calibration.VoltagePoint::value).toList();
            return new CalibrationCurve(
                    kind,
                    value -> follow * curve.volts(value),
                    volts -> curve.value(volts / follow),
                    rows.get(0),
                    rows.get(rows.size() - 1),
                    SignalTexts.text("curve.rows", String.valueOf(rows.size())),
                    TABLE,
                    rows);
        }
        Calibration.AmplifiedThermocouple amplified = (Calibration.AmplifiedThermocouple) curve;
        return new CalibrationCurve(
                kind,
                curve::volts,
                curve::value,
                ThermocoupleVolts.LOWEST_CELSIUS,
                ThermocoupleVolts.HIGHEST_CELSIUS,
                Text.of("U = " + Formats.volts(amplified.offsetVolts()) + " + " + Formats.number(amplified.gainRatio())
                        + " E(T)"),
                THERMOCOUPLE,
                List.of());
    }

    private static Optional<CalibrationCurve> pulses(Measurement of, Calibration.PulseLevels pulses) {
        OptionalDouble rate = PulseRate.hertzPerUnit(pulses, of.unit());
        return rate.isEmpty()
                ? Optional.empty()
                : Optional.of(new CalibrationCurve(
                        SignalKind.FREQUENCY,
                        value -> value * rate.getAsDouble(),
                        hertz -> hertz / rate.getAsDouble(),
                        of.lowest(),
                        of.highest(),
                        PulseRate.formula(pulses, of.unit()),
                        SignalTexts.text("curve.source.wheel"),
                        List.of()));
    }
}
