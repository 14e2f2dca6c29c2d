package org.ohmloom.ground.sensor;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Measurement;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * A switch or a pulse sensor: the low level (0) must stay below the falling threshold, the high one (1) above the rising one. A
 * reading is the voltage at the pin.
 */
final class LevelChannel implements Channel {

    private final Measurement measurement;
    private final double risingVolts;
    private final double fallingVolts;
    private final Optional<InputCircuit.PullUp> pullUp;

    LevelChannel(
            Measurement measurement, double risingVolts, double fallingVolts, Optional<InputCircuit.PullUp> pullUp) {
        this.measurement = measurement;
        this.risingVolts = risingVolts;
        this.fallingVolts = fallingVolts;
        this.pullUp = pullUp;
    }

    @Override
    public List<Double> values() {
        return List.of(0.0, 1.0);
    }

    @Override
    public InputCircuit circuit(double value, Conditions at) {
        boolean isHigh = value > 0;
        double volts = 0;
        OptionalDouble ohms;
        if (measurement.calibration() instanceof Calibration.SwitchContact contact) {
            ohms = isHigh ? contact.openOhms() : OptionalDouble.of(contact.closedOhms());
        } else {
            Calibration.PulseLevels pulses = (Calibration.PulseLevels) measurement.calibration();
            volts = isHigh ? pulses.highVolts().orElse(0) : pulses.lowVolts();
            ohms = isHigh && pulses.highVolts().isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(pulses.outputOhms().orElse(0));
        }
        double series =
                ohms.isEmpty() ? Double.POSITIVE_INFINITY : ohms.getAsDouble() + at.leadOhms() + at.returnOhms();
        return new InputCircuit(at.returnVolts() + volts, series, pullUp, at.inputSiemens());
    }

    @Override
    public double reading(double value, Conditions at) {
        return circuit(value, at).pinVolts();
    }

    @Override
    public double perVoltAtPin(double value, Conditions at) {
        return 1;
    }

    @Override
    public Optional<Limit> limit(double value, Conditions ideal) {
        double level = reading(value, ideal);
        boolean isHigh = value > 0;
        double margin = isHigh ? level - risingVolts : fallingVolts - level;
        return Optional.of(new Limit(
                Math.max(0, margin),
                ReadingTexts.text(
                        isHigh ? "limit.high-level" : "limit.low-level",
                        Formats.volts(isHigh ? level : fallingVolts),
                        Formats.volts(isHigh ? risingVolts : level))));
    }

    @Override
    public Optional<Text> unusable(double value, Conditions actual) {
        double volts = reading(value, actual);
        boolean isHigh = value > 0;
        return isHigh == volts > (isHigh ? risingVolts : fallingVolts)
                ? Optional.empty()
                : Optional.of(ReadingTexts.text(isHigh ? "unusable.high-level" : "unusable.low-level"));
    }

    @Override
    public String unit() {
        return "V";
    }

    @Override
    public Text formula(Disturbance disturbance, double value, Conditions before, Conditions after) {
        String was = Figures.of(reading(value, before), "V");
        String is = Figures.of(reading(value, after), "V");
        return after.wiring(disturbance, before)
                .map(cause -> ReadingTexts.text("formula.level-with", was, is, cause))
                .orElseGet(() -> ReadingTexts.text("formula.level", was, is));
    }
}
