package org.ohmloom.ground.sensor;

import java.util.Optional;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Component;
import org.ohmloom.model.Harness;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.ResistanceCurve;
import org.ohmloom.model.VoltageCurve;
import org.ohmloom.words.Text;

/**
 * The channel a link makes, or what has to be entered before it can be told.
 *
 * @param channel the channel
 * @param missing what is not entered, in words that follow "Sensor error not checked:"; empty with a channel
 */
record ChannelChoice(Optional<Channel> channel, Text missing) {

    static ChannelChoice of(Harness harness, SensorLink link, Measurement measurement) {
        Calibration calibration = measurement.calibration();
        InputStage input = link.pin().input().orElse(InputStage.UNKNOWN);
        Optional<InputCircuit.PullUp> pullUp = pullUp(link.pin());
        if (!(calibration instanceof Calibration.CurrentLine) && link.back().isEmpty()) {
            return without("gap.no-way-back");
        }
        if (calibration instanceof Calibration.RatiometricLine || calibration instanceof Calibration.VoltageLine) {
            return line(link, measurement, input, pullUp);
        }
        if (calibration instanceof VoltageCurve) {
            return line(link, measurement, input, pullUp);
        }
        if (calibration instanceof ResistanceCurve curve) {
            return pullUp.isEmpty()
                    ? without("gap.no-pull-up")
                    : with(new ResistanceChannel(measurement, curve, pullUp.get()));
        }
        if (calibration instanceof Calibration.CurrentLine line) {
            return current(link, measurement, line, input);
        }
        if (calibration instanceof Calibration.Thermocouple) {
            return input.coldJunction().isEmpty()
                    ? without("gap.cold-junction")
                    : with(new ThermocoupleChannel(measurement, ambientCelsius(harness, link.unitComponent()), pullUp));
        }
        return level(calibration, measurement, input, pullUp);
    }

    private static ChannelChoice line(
            SensorLink link, Measurement measurement, InputStage input, Optional<InputCircuit.PullUp> pullUp) {
        Optional<VoltageCurve> curve =
                measurement.calibration() instanceof VoltageCurve given ? Optional.of(given) : Optional.empty();
        boolean ratiometric = measurement.calibration() instanceof Calibration.RatiometricLine
                || curve.stream().anyMatch(each -> each.supplyVolts().isPresent());
        double nominal = link.referenceSupply().stream()
                .flatMapToDouble(pin -> pin.referenceVolts().stream())
                .findFirst()
                .orElse(Double.NaN);
        if (input.scale().isEmpty()) {
            return without("gap.scale");
        }
        boolean scaled = input.scale().get() == InputStage.Scale.RATIOMETRIC;
        if ((ratiometric || scaled) && Double.isNaN(nominal)) {
            return without("gap.reference-volts");
        }
        if (ratiometric && link.supply().isEmpty()) {
            return without("gap.no-supply");
        }
        return with(
                curve.isPresent()
                        ? new CurveChannel(measurement, curve.get(), scaled, nominal, pullUp)
                        : new LineChannel(measurement, scaled, nominal, pullUp));
    }

    private static ChannelChoice current(
            SensorLink link, Measurement measurement, Calibration.CurrentLine line, InputStage input) {
        if (input.shuntOhms().isEmpty()) {
            return without("gap.no-shunt");
        }
        return link.supply().isEmpty()
                ? without("gap.no-supply")
                : with(new CurrentChannel(measurement, line, input.shuntOhms().getAsDouble()));
    }

    private static ChannelChoice level(
            Calibration calibration, Measurement measurement, InputStage input, Optional<InputCircuit.PullUp> pullUp) {
        if (input.risingVolts().isEmpty() || input.fallingVolts().isEmpty()) {
            return without("gap.thresholds");
        }
        boolean lifted = calibration instanceof Calibration.SwitchContact
                || calibration instanceof Calibration.PulseLevels pulses
                        && pulses.highVolts().isEmpty();
        if (lifted && pullUp.isEmpty()) {
            return without("gap.no-pull-up");
        }
        return with(new LevelChannel(
                measurement,
                input.risingVolts().getAsDouble(),
                input.fallingVolts().getAsDouble(),
                pullUp));
    }

    private static Optional<InputCircuit.PullUp> pullUp(Pin pin) {
        return pin.pullUpVolts().isPresent() && pin.pullUpOhms().isPresent()
                ? Optional.of(new InputCircuit.PullUp(
                        pin.pullUpVolts().getAsDouble(), pin.pullUpOhms().getAsDouble()))
                : Optional.empty();
    }

    /** Air temperature where a component sits, deg C. */
    static double ambientCelsius(Harness harness, Component component) {
        return component
                .zone()
                .map(zone -> harness.zones().get(zone).ambientCelsius())
                .orElse(harness.rules().ambientCelsius());
    }

    private static ChannelChoice with(Channel channel) {
        return new ChannelChoice(Optional.of(channel), Text.NONE);
    }

    private static ChannelChoice without(String key) {
        return new ChannelChoice(Optional.empty(), ReadingTexts.text(key));
    }
}
