package org.ohmloom.analysis.start;

import static org.ohmloom.units.Require.notBlank;

import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;

/**
 * A sensor of a first harness.
 *
 * @param name  what people call it
 * @param kind  what it is
 * @param place name of the place where it sits
 */
public record StartSensor(String name, Kind kind, String place) {

    /** Kinds of sensor by the wires they need and the input that reads them. */
    public enum Kind {
        /** Three wires: reference supply, signal, return. Pressure, position. */
        RATIOMETRIC(Sensor.Kind.RATIOMETRIC, true, PinRole.ANALOGUE_INPUT, SignalClass.ANALOGUE_SIGNAL),
        /** Two wires: a temperature-dependent resistor. */
        THERMISTOR(Sensor.Kind.THERMISTOR, false, PinRole.THERMISTOR_INPUT, SignalClass.ANALOGUE_SIGNAL),
        /** Three wires: pulses of speed or flow. */
        PULSE(Sensor.Kind.HALL, true, PinRole.FREQUENCY_INPUT, SignalClass.PULSE_SIGNAL),
        /** Two wires: a contact to the sensor return. */
        CONTACT(Sensor.Kind.SWITCH, false, PinRole.SWITCH_TO_GROUND_INPUT, SignalClass.ANALOGUE_SIGNAL);

        private final Sensor.Kind sensing;
        private final boolean supplied;
        private final PinRole input;
        private final SignalClass signal;

        Kind(Sensor.Kind sensing, boolean supplied, PinRole input, SignalClass signal) {
            this.sensing = sensing;
            this.supplied = supplied;
            this.input = input;
            this.signal = signal;
        }

        Sensor.Kind sensing() {
            return sensing;
        }

        boolean supplied() {
            return supplied;
        }

        PinRole input() {
            return input;
        }

        SignalClass signal() {
            return signal;
        }
    }

    public StartSensor {
        notBlank(name, "name of a sensor");
        notBlank(place, "place of %s", name);
    }
}
