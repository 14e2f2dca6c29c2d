package org.ohmloom.signal.unit;

import java.util.OptionalDouble;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.InputRange;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.PinUse;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.VoltageCurve;
import org.ohmloom.signal.calibration.PulseRate;

/** Whether an input can tell what a sensor gives apart: its range of voltage or frequency, its shunt, its cold junction. */
final class PinRanges {

    private PinRanges() {}

    /** Whether a pin set up for a role can read a sensor; what is not known is taken to be well. */
    static boolean suits(ControlUnit unit, Pin pin, PinRole role, Sensor sensor) {
        PinUse use = pin.use(role);
        return sensor.measurement()
                .map(measurement -> suits(unit, use, measurement))
                .orElse(true);
    }

    private static boolean suits(ControlUnit unit, PinUse use, Measurement measurement) {
        Calibration calibration = measurement.calibration();
        if (calibration instanceof Calibration.CurrentLine) {
            return use.input().map(input -> input.shuntOhms().isPresent()).orElse(false);
        }
        if (calibration instanceof Calibration.Thermocouple) {
            return use.input().flatMap(InputStage::coldJunction).isPresent();
        }
        if (use.range().isEmpty()) {
            return true;
        }
        InputRange range = use.range().get();
        if (calibration instanceof Calibration.PulseLevels pulses) {
            OptionalDouble perUnit = PulseRate.hertzPerUnit(pulses, measurement.unit());
            return perUnit.isEmpty()
                    || perUnit.getAsDouble() * measurement.highest()
                            <= range.highestHertz().orElse(Double.POSITIVE_INFINITY);
        }
        if (calibration instanceof Calibration.VoltageLine line) {
            return within(line.lowVolts(), range) && within(line.highVolts(), range);
        }
        if (calibration instanceof Calibration.RatiometricLine line) {
            double volts = unit.pinsOf(PinRole.REFERENCE_SUPPLY)
                    .flatMapToDouble(pin -> pin.referenceVolts().stream())
                    .findFirst()
                    .orElse(0);
            return within(line.lowFraction() * volts, range) && within(line.highFraction() * volts, range);
        }
        return !(calibration instanceof VoltageCurve curve)
                || within(curve.volts(measurement.lowest()), range)
                        && within(curve.volts(measurement.highest()), range);
    }

    private static boolean within(double volts, InputRange range) {
        return volts >= range.lowestVolts().orElse(Double.NEGATIVE_INFINITY)
                && volts <= range.highestVolts().orElse(Double.POSITIVE_INFINITY);
    }
}
