package org.ohmloom.ground.sensor;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.VoltageCurve;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * A sensor that gives a voltage by a curve that is not straight, in proportion to its supply or not. The unit turns the voltage it
 * reads back into a value by the same curve.
 */
final class CurveChannel implements Channel {

    /** Values looked at over the span, both ends among them: the curve is not straight. */
    private static final int VALUES = 13;

    /** A voltage for finding a slope, V. */
    private static final double PROBE_VOLTS = 1e-6;

    private final Measurement measurement;
    private final VoltageCurve curve;
    private final boolean scaled;
    private final double nominalVolts;
    private final Optional<InputCircuit.PullUp> pullUp;

    /**
     * A channel.
     *
     * @param measurement  what is measured
     * @param curve        its calibration
     * @param scaled       whether the converter goes by the reference supply
     * @param nominalVolts nominal voltage of the reference supply, V; NaN where none is needed
     * @param pullUp       pull-up of the input
     */
    CurveChannel(
            Measurement measurement,
            VoltageCurve curve,
            boolean scaled,
            double nominalVolts,
            Optional<InputCircuit.PullUp> pullUp) {
        this.measurement = measurement;
        this.curve = curve;
        this.scaled = scaled;
        this.nominalVolts = nominalVolts;
        this.pullUp = pullUp;
    }

    @Override
    public List<Double> values() {
        return measurement.spread(VALUES);
    }

    @Override
    public InputCircuit circuit(double value, Conditions at) {
        double volts = curve.volts(value);
        double follow = 1;
        if (curve.supplyVolts().isPresent()) {
            double share = volts / curve.supplyVolts().getAsDouble();
            volts = share * at.supplyVolts();
            follow = 1 - share;
        }
        return new InputCircuit(
                volts + follow * at.returnVolts(),
                curve.outputOhms().orElse(0) + at.leadOhms() + follow * at.returnOhms(),
                pullUp,
                at.inputSiemens());
    }

    @Override
    public double reading(double value, Conditions at) {
        return taken(circuit(value, at).pinVolts(), at);
    }

    /** What the unit takes a voltage at its pin for. */
    private double taken(double pinVolts, Conditions at) {
        double volts = scaled ? pinVolts / at.referenceVolts() * nominalVolts : pinVolts;
        return curve.value(
                curve.supplyVolts().isPresent()
                        ? volts / nominalVolts * curve.supplyVolts().getAsDouble()
                        : volts);
    }

    @Override
    public double perVoltAtPin(double value, Conditions at) {
        double volts = circuit(value, at).pinVolts();
        return Math.abs(taken(volts + PROBE_VOLTS, at) - taken(volts - PROBE_VOLTS, at)) / (2 * PROBE_VOLTS);
    }

    @Override
    public String unit() {
        return measurement.unit();
    }

    @Override
    public Text formula(Disturbance disturbance, double value, Conditions before, Conditions after) {
        double was = circuit(value, before).pinVolts();
        double is = circuit(value, after).pinVolts();
        Text cause =
                switch (disturbance) {
                    case REFERENCE -> ReadingTexts.text(
                            "formula.reference", Formats.volts(after.referenceVolts()), Formats.volts(nominalVolts));
                    case FEED -> ReadingTexts.text(
                            "formula.droop", Formats.volts(before.supplyVolts() - after.supplyVolts()));
                    case OWN_RETURN, OTHER_RETURN -> ReadingTexts.text(
                            "formula.in-return", Formats.volts(after.returnVolts() - before.returnVolts()));
                    default -> disturbance.words();
                };
        return ReadingTexts.text(
                "formula.curve",
                cause,
                Formats.volts(was),
                Formats.volts(is),
                Figures.change(reading(value, before), reading(value, after), unit()));
    }
}
