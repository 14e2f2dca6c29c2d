package org.ohmloom.graph;

import java.util.Optional;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;

/** Which inputs of control units read which sensors, over wires and contacts alone, and what of a unit feeds them. */
public final class SensorInputs {
    private final Network network;
    private final Islands pieces;

    private SensorInputs(Network network) {
        this.network = network;
        this.pieces = Islands.of(network, Branch::isPlainResistance);
    }

    /** Those of a network as drawn. */
    public static SensorInputs of(Network network) {
        return new SensorInputs(network);
    }

    /** Whether the signal of a sensor leads to a pin that is an input. */
    public boolean reads(Component unit, Pin pin, Component sensor) {
        return pin.role().isInput() && joined(point(unit, pin.name()), point(sensor, Sensor.SIGNAL));
    }

    /** The reference supply of a unit that the supply of a sensor leads to. */
    public Optional<Pin> fedBy(Component unit, ControlUnit device, Component sensor) {
        Optional<PointId> supply = point(sensor, Sensor.SUPPLY);
        return device.pinsOf(PinRole.REFERENCE_SUPPLY)
                .filter(pin -> joined(point(unit, pin.name()), supply))
                .findFirst();
    }

    /** The reference supply a converter of a unit may go by for a sensor: the one that feeds it, else the unit's first. */
    public static Optional<Pin> comparedWith(Optional<Pin> fedBy, ControlUnit device) {
        return fedBy.or(() -> device.pinsOf(PinRole.REFERENCE_SUPPLY).findFirst());
    }

    /** Whether two points are joined over wires and contacts alone; points nothing is at are not. */
    public boolean joined(Optional<PointId> one, Optional<PointId> other) {
        return one.isPresent() && other.isPresent() && pieces.together(one.get(), other.get());
    }

    /** The point of a terminal, where anything is at it. */
    public Optional<PointId> point(Component component, String terminal) {
        return network.index().terminal(component.id(), terminal);
    }
}
