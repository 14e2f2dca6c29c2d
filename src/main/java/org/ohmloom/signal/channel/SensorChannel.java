package org.ohmloom.signal.channel;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.SensorInputs;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.Sensor;

/**
 * A sensor and the input that reads it, by the plan of the unit's pins or by the wires that join them.
 *
 * @param name      what the channel is called in its unit
 * @param component the sensor
 * @param sensor    what it is
 * @param unit      the control unit that reads it
 * @param device    what it is
 * @param pin       the input
 * @param fedBy     the reference supply of that unit the sensor's supply is joined to
 * @param supplied  whether the sensor's supply is joined to anything
 * @param wired     whether wires join the signal to the input
 */
public record SensorChannel(
        String name,
        Component component,
        Sensor sensor,
        Component unit,
        ControlUnit device,
        Pin pin,
        Optional<Pin> fedBy,
        boolean supplied,
        boolean wired) {

    /** This channel with its sensor changed. */
    public SensorChannel with(Sensor changed) {
        return new SensorChannel(name, component, changed, unit, device, pin, fedBy, supplied, wired);
    }

    /** This channel read at another input, no wire leading there. */
    public SensorChannel readAt(Pin input) {
        return new SensorChannel(name, component, sensor, unit, device, input, fedBy, supplied, false);
    }

    /** What the sensor measures, if entered. */
    public Optional<Measurement> measurement() {
        return sensor.measurement();
    }

    /** The reference supply its converter goes by: the one that feeds the sensor, else the unit's first; V. */
    public OptionalDouble referenceVolts() {
        return SensorInputs.comparedWith(fedBy, device).map(Pin::referenceVolts).orElse(OptionalDouble.empty());
    }

    /** Where it is read: {@code ECU1.A3}. */
    public String at() {
        return unit.id() + "." + pin.name();
    }
}
