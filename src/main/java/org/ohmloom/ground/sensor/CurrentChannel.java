package org.ohmloom.ground.sensor;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Measurement;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * A current transmitter and a shunt. Wire and offsets leave the current alone as long as the transmitter has the least voltage it
 * works at; short of that it gives only what supply, wire and shunt let through.
 */
final class CurrentChannel implements Channel {

    private final Measurement measurement;
    private final Calibration.CurrentLine line;
    private final double shuntOhms;

    CurrentChannel(Measurement measurement, Calibration.CurrentLine line, double shuntOhms) {
        this.measurement = measurement;
        this.line = line;
        this.shuntOhms = shuntOhms;
    }

    @Override
    public List<Double> values() {
        return List.of(measurement.lowest(), (measurement.lowest() + measurement.highest()) / 2, measurement.highest());
    }

    private double wanted(double value) {
        return line.lowAmps()
                + (value - measurement.lowest()) / measurement.span() * (line.highAmps() - line.lowAmps());
    }

    private double given(double value, Conditions at) {
        double most = (at.supplyVolts() - line.minimumVolts().orElse(0)) / (at.leadOhms() + burden(at));
        return Double.isNaN(most) ? wanted(value) : Math.max(0, Math.min(wanted(value), most));
    }

    private double burden(Conditions at) {
        return 1 / (1 / shuntOhms + at.inputSiemens());
    }

    @Override
    public InputCircuit circuit(double value, Conditions at) {
        return new InputCircuit(given(value, at) * burden(at), burden(at), Optional.empty(), 0);
    }

    @Override
    public double reading(double value, Conditions at) {
        double amps = given(value, at) * burden(at) / shuntOhms;
        return measurement.lowest() + (amps - line.lowAmps()) / (line.highAmps() - line.lowAmps()) * measurement.span();
    }

    @Override
    public double perVoltAtPin(double value, Conditions at) {
        return Math.abs(measurement.span() / (line.highAmps() - line.lowAmps()) / shuntOhms);
    }

    @Override
    public Optional<Text> unusable(double value, Conditions actual) {
        return given(value, actual) < wanted(value)
                ? Optional.of(ReadingTexts.text("unusable.transmitter", Formats.volts(actual.supplyVolts())))
                : Optional.empty();
    }

    @Override
    public String unit() {
        return measurement.unit();
    }

    @Override
    public Text formula(Disturbance disturbance, double value, Conditions before, Conditions after) {
        return switch (disturbance) {
            case LOAD -> ReadingTexts.text(
                    "formula.shunt",
                    Formats.ohms(shuntOhms),
                    Formats.ohms(1 / after.inputSiemens()),
                    Formats.ohms(burden(after)));
            default -> ReadingTexts.text(
                    "formula.wanted",
                    Formats.amps(wanted(value)),
                    Formats.volts(after.supplyVolts()),
                    Formats.volts(line.minimumVolts().orElse(0)),
                    Formats.ohms(after.leadOhms()),
                    Formats.ohms(burden(after)),
                    Formats.amps(given(value, after)));
        };
    }
}
