package org.ohmloom.ground.sensor;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.ResistanceCurve;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * A resistance with a pull-up: thermistor, resistance thermometer or sender. The unit takes R = Rp V / (Vp - V) and looks the value
 * up. A sensor with a dissipation constant is warmer than its medium by the power in it over that constant.
 */
final class ResistanceChannel implements Channel {

    /** Values looked at over the span, both ends among them: the curve is not straight. */
    private static final int VALUES = 13;

    /** Rounds in which a sensor's own warming settles; each is some thousandth of the one before. */
    private static final int ROUNDS = 30;

    /** A voltage for finding a slope, V. */
    private static final double PROBE_VOLTS = 1e-6;

    private final Measurement measurement;
    private final ResistanceCurve curve;
    private final InputCircuit.PullUp pullUp;

    ResistanceChannel(Measurement measurement, ResistanceCurve curve, InputCircuit.PullUp pullUp) {
        this.measurement = measurement;
        this.curve = curve;
        this.pullUp = pullUp;
    }

    @Override
    public List<Double> values() {
        return measurement.spread(VALUES);
    }

    @Override
    public InputCircuit circuit(double value, Conditions at) {
        double own = value;
        double milder = measurement.dissipationWattsPerKelvin().orElse(Double.POSITIVE_INFINITY);
        for (int round = 0; at.heated() && round < ROUNDS; round++) {
            own = value + watts(own, at) / milder;
        }
        return circuitAt(own, at);
    }

    private InputCircuit circuitAt(double own, Conditions at) {
        return new InputCircuit(
                at.returnVolts(),
                curve.ohms(own) + at.leadOhms() + at.returnOhms(),
                Optional.of(pullUp),
                at.inputSiemens());
    }

    private double watts(double own, Conditions at) {
        double amps = circuitAt(own, at).amps();
        return amps * amps * curve.ohms(own);
    }

    private double ohmsRead(double value, Conditions at) {
        double volts = circuit(value, at).pinVolts();
        return pullUp.ohms() * volts / (pullUp.volts() - volts);
    }

    @Override
    public double reading(double value, Conditions at) {
        double ohms = ohmsRead(value, at);
        return ohms > 0
                ? curve.value(ohms)
                : curve.ohms(measurement.highest()) < curve.ohms(measurement.lowest())
                        ? measurement.highest() + measurement.span()
                        : measurement.lowest() - measurement.span();
    }

    @Override
    public double perVoltAtPin(double value, Conditions at) {
        double volts = circuit(value, at).pinVolts();
        double moved = volts + PROBE_VOLTS;
        return Math.abs(curve.value(pullUp.ohms() * moved / (pullUp.volts() - moved))
                        - curve.value(pullUp.ohms() * volts / (pullUp.volts() - volts)))
                / PROBE_VOLTS;
    }

    @Override
    public Optional<Text> unusable(double value, Conditions actual) {
        double ohms = ohmsRead(value, actual);
        return ohms > 0 && Double.isFinite(ohms)
                ? Optional.empty()
                : Optional.of(ReadingTexts.text("unusable.pull-up"));
    }

    @Override
    public String unit() {
        return measurement.unit();
    }

    @Override
    public Text formula(Disturbance disturbance, double value, Conditions before, Conditions after) {
        Text cause = disturbance == Disturbance.HEAT
                ? Text.of(Formats.watts(watts(value, before)) + " / ("
                        + Formats.watts(measurement.dissipationWattsPerKelvin().orElse(Double.NaN)) + "/K)")
                : after.wiring(disturbance, before).orElseGet(disturbance::words);
        return ReadingTexts.text(
                "formula.pull-up",
                cause,
                Formats.ohms(pullUp.ohms()),
                Formats.volts(pullUp.volts()),
                ReadingTexts.text(
                        "formula.reads-as",
                        Formats.ohms(ohmsRead(value, before)),
                        Formats.ohms(ohmsRead(value, after))),
                Figures.change(reading(value, before), reading(value, after), unit()));
    }
}
