package org.ohmloom.ground.sensor;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.ThermocoupleVolts;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * A thermocouple. It gives E(T) - E(Tj), Tj the temperature where its metals end: the unit's terminals with matching extension
 * wires, the joint with copper ones. The unit adds E of its own terminals and looks the sum up; voltages are added, never
 * temperatures.
 */
final class ThermocoupleChannel implements Channel {

    /** Values looked at over the span, both ends among them: the curve is not straight. */
    private static final int VALUES = 9;

    /** A voltage for finding a slope, V. */
    private static final double PROBE_VOLTS = 1e-6;

    private final Measurement measurement;
    private final double terminalCelsius;
    private final Optional<InputCircuit.PullUp> pullUp;

    ThermocoupleChannel(Measurement measurement, double terminalCelsius, Optional<InputCircuit.PullUp> pullUp) {
        this.measurement = measurement;
        this.terminalCelsius = terminalCelsius;
        this.pullUp = pullUp;
    }

    @Override
    public List<Double> values() {
        return measurement.spread(VALUES);
    }

    @Override
    public InputCircuit circuit(double value, Conditions at) {
        double open = ThermocoupleVolts.volts(value) - ThermocoupleVolts.volts(at.jointCelsius());
        return new InputCircuit(open + at.returnVolts(), at.leadOhms() + at.returnOhms(), pullUp, at.inputSiemens());
    }

    @Override
    public double reading(double value, Conditions at) {
        double added = at.coldJunction() ? ThermocoupleVolts.volts(terminalCelsius) : 0;
        return ThermocoupleVolts.celsius(circuit(value, at).pinVolts() + added);
    }

    @Override
    public double perVoltAtPin(double value, Conditions at) {
        double volts = ThermocoupleVolts.volts(value);
        return (ThermocoupleVolts.celsius(volts + PROBE_VOLTS) - ThermocoupleVolts.celsius(volts)) / PROBE_VOLTS;
    }

    @Override
    public String unit() {
        return measurement.unit();
    }

    @Override
    public Text formula(Disturbance disturbance, double value, Conditions before, Conditions after) {
        Text cause =
                switch (disturbance) {
                    case JOINT -> Text.of("E(" + Formats.celsius(terminalCelsius) + ") - E("
                            + Formats.celsius(after.jointCelsius())
                            + ") = "
                            + Formats.volts(ThermocoupleVolts.volts(terminalCelsius)
                                    - ThermocoupleVolts.volts(after.jointCelsius())));
                    case COLD_JUNCTION -> ReadingTexts.text(
                            "formula.not-added",
                            Formats.celsius(terminalCelsius),
                            Formats.volts(ThermocoupleVolts.volts(terminalCelsius)));
                    default -> ReadingTexts.text(
                            "formula.at-pin",
                            Formats.volts(circuit(value, after).pinVolts()
                                    - circuit(value, before).pinVolts()));
                };
        return Text.joined("; ", List.of(cause, Figures.change(reading(value, before), reading(value, after), unit())));
    }
}
