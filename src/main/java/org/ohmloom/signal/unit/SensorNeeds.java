package org.ohmloom.signal.unit;

import java.util.Optional;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.ResistanceCurve;
import org.ohmloom.model.Sensor;

/** What a sensor asks of the pin that reads it: by its calibration where it is known, else by its kind. */
public final class SensorNeeds {

    private SensorNeeds() {}

    /** What the pin is to be set up as. */
    public static PinRole signalRole(Sensor sensor) {
        Optional<Calibration> calibration = sensor.measurement().map(Measurement::calibration);
        if (calibration.isPresent()) {
            if (calibration.get() instanceof ResistanceCurve) {
                return PinRole.THERMISTOR_INPUT;
            }
            if (calibration.get() instanceof Calibration.PulseLevels) {
                return PinRole.FREQUENCY_INPUT;
            }
            return calibration.get() instanceof Calibration.SwitchContact
                    ? PinRole.SWITCH_TO_GROUND_INPUT
                    : PinRole.ANALOGUE_INPUT;
        }
        return switch (sensor.kind()) {
            case THERMISTOR, RESISTANCE_THERMOMETER, SENDER -> PinRole.THERMISTOR_INPUT;
            case HALL, VARIABLE_RELUCTANCE -> PinRole.FREQUENCY_INPUT;
            case SWITCH -> PinRole.SWITCH_TO_GROUND_INPUT;
            case RATIOMETRIC, THERMOCOUPLE, EXHAUST_OXYGEN, OTHER -> PinRole.ANALOGUE_INPUT;
        };
    }

    /**
     * Whether a pin as it is set up now can read a sensor at all. A contact is read at any input; a resistance and a voltage at each
     * other's inputs as far as their pull-up goes; of a sensor of no known sort nothing is asked but an input.
     */
    public static boolean accepts(Sensor sensor, Pin pin) {
        PinRole needed = signalRole(sensor);
        boolean known = sensor.measurement().isPresent() || sensor.kind() != Sensor.Kind.OTHER;
        if (!known || needed == PinRole.SWITCH_TO_GROUND_INPUT) {
            return pin.role().isInput();
        }
        boolean measures = pin.role() == PinRole.ANALOGUE_INPUT || pin.role() == PinRole.THERMISTOR_INPUT;
        return pin.role() == needed || measures && needed != PinRole.FREQUENCY_INPUT;
    }

    /** Whether a resistance hangs on an input for voltages that has no pull-up. */
    public static boolean missesPullUp(Sensor sensor, Pin pin) {
        return signalRole(sensor) == PinRole.THERMISTOR_INPUT
                && pin.role() == PinRole.ANALOGUE_INPUT
                && pin.pullUpOhms().isEmpty();
    }

    /** Whether a voltage hangs on an input whose pull-up lifts it. */
    public static boolean fightsPullUp(Sensor sensor, Pin pin) {
        boolean known = sensor.measurement().isPresent() || sensor.kind() != Sensor.Kind.OTHER;
        return known
                && signalRole(sensor) == PinRole.ANALOGUE_INPUT
                && pin.role() == PinRole.THERMISTOR_INPUT
                && pin.pullUpOhms().isPresent();
    }

    /** Whether a pin set up for a role can tell what the sensor gives apart; what is not known is taken to be well. */
    public static boolean suits(ControlUnit unit, Pin pin, PinRole role, Sensor sensor) {
        return PinRanges.suits(unit, pin, role, sensor);
    }
}
