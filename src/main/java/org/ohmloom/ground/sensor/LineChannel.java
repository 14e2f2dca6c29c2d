package org.ohmloom.ground.sensor;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Measurement;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * A sensor that gives a voltage in a straight line, in proportion to its supply or not. Read against the unit's reference supply,
 * what that does cancels (ratiometric line) or comes in (voltage line); read against a fixed voltage it is the other way round.
 */
final class LineChannel implements Channel {

    private final Measurement measurement;
    private final boolean ratiometric;
    private final double low;
    private final double high;
    private final double outputOhms;
    private final boolean scaled;
    private final double nominalVolts;
    private final Optional<InputCircuit.PullUp> pullUp;

    /**
     * A channel.
     *
     * @param measurement  what is measured
     * @param scaled       whether the converter goes by the reference supply
     * @param nominalVolts nominal voltage of the reference supply, V; NaN where none is needed
     * @param pullUp       pull-up of the input
     */
    LineChannel(Measurement measurement, boolean scaled, double nominalVolts, Optional<InputCircuit.PullUp> pullUp) {
        this.measurement = measurement;
        this.scaled = scaled;
        this.nominalVolts = nominalVolts;
        this.pullUp = pullUp;
        if (measurement.calibration() instanceof Calibration.RatiometricLine line) {
            ratiometric = true;
            low = line.lowFraction();
            high = line.highFraction();
            outputOhms = line.outputOhms().orElse(0);
        } else {
            Calibration.VoltageLine line = (Calibration.VoltageLine) measurement.calibration();
            ratiometric = false;
            low = line.lowVolts();
            high = line.highVolts();
            outputOhms = line.outputOhms().orElse(0);
        }
    }

    @Override
    public List<Double> values() {
        return List.of(measurement.lowest(), (measurement.lowest() + measurement.highest()) / 2, measurement.highest());
    }

    private double onLine(double value) {
        return low + (value - measurement.lowest()) / measurement.span() * (high - low);
    }

    @Override
    public InputCircuit circuit(double value, Conditions at) {
        double line = onLine(value);
        double follow = ratiometric ? 1 - line : 1;
        double open = (ratiometric ? line * at.supplyVolts() : line) + follow * at.returnVolts();
        double ohms = outputOhms + at.leadOhms() + follow * at.returnOhms();
        return new InputCircuit(open, ohms, pullUp, at.inputSiemens());
    }

    @Override
    public double reading(double value, Conditions at) {
        double volts = circuit(value, at).pinVolts();
        double seen = scaled ? volts / at.referenceVolts() : volts;
        return measurement.lowest() + (seen - bottom()) / (top() - bottom()) * measurement.span();
    }

    /** What the unit takes for the lowest value: a share of the reference supply, or volts. */
    private double bottom() {
        return taken(low);
    }

    private double top() {
        return taken(high);
    }

    private double taken(double end) {
        if (ratiometric) {
            return scaled ? end : end * nominalVolts;
        }
        return scaled ? end / nominalVolts : end;
    }

    @Override
    public double perVoltAtPin(double value, Conditions at) {
        return Math.abs(measurement.span() / (top() - bottom()) / (scaled ? at.referenceVolts() : 1));
    }

    @Override
    public String unit() {
        return measurement.unit();
    }

    @Override
    public Text formula(Disturbance disturbance, double value, Conditions before, Conditions after) {
        String span = Figures.of(measurement.span(), unit());
        String ends = ratiometric
                ? "((" + Formats.number(high) + " - " + Formats.number(low) + ") x "
                        + Formats.volts(scaled ? after.referenceVolts() : nominalVolts) + ")"
                : "(" + Formats.volts(high) + " - " + Formats.volts(low) + ")";
        String slope = " / " + ends + " x " + span;
        String share = Formats.number(onLine(value));
        Text cause =
                switch (disturbance) {
                    case REFERENCE -> ReadingTexts.text(
                            "formula.reference", Formats.volts(after.referenceVolts()), Formats.volts(nominalVolts));
                    case FEED -> ReadingTexts.text(
                            "formula.droop-on-line", Formats.volts(before.supplyVolts() - after.supplyVolts()), share);
                    case OWN_RETURN, OTHER_RETURN -> Text.of(Formats.volts(after.returnVolts() - before.returnVolts())
                            + (ratiometric ? " x (1 - " + share + ")" : ""));
                    default -> ReadingTexts.text(
                            "formula.at-pin",
                            Formats.volts(circuit(value, after).pinVolts()
                                    - circuit(value, before).pinVolts()));
                };
        return Text.joined("", List.of(cause, Text.of(slope)));
    }
}
