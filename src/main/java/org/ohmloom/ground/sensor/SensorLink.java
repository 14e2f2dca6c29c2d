package org.ohmloom.ground.sensor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Islands;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;

/**
 * A sensor and the input its signal wire leads to, over wires and contacts alone.
 *
 * @param component     the sensor
 * @param sensor        what it is
 * @param unitComponent the control unit that reads it
 * @param unit          what it is
 * @param pin           the input
 * @param signal        the sensor's signal terminal
 * @param at            the pin
 * @param back          the sensor's return, where a conductor leads from it to the unit's reference
 * @param reference     the unit's sensor return; its ground where it has none
 * @param supply        the sensor's supply, where it is wired
 * @param fed           the unit's reference supply the sensor's supply is wired to
 */
record SensorLink(
        Component component,
        Sensor sensor,
        Component unitComponent,
        ControlUnit unit,
        Pin pin,
        PointId signal,
        PointId at,
        Optional<PointId> back,
        PointId reference,
        Optional<PointId> supply,
        Optional<Pin> fed) {

    /** All links of a harness, in the order of its sensors and pins. */
    static List<SensorLink> of(Harness harness, Network network) {
        Islands pieces = Islands.of(network, Branch::isPlainResistance);
        List<SensorLink> links = new ArrayList<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Sensor sensor) {
                Optional<PointId> signal = network.index().terminal(component.id(), Sensor.SIGNAL);
                signal.ifPresent(from -> links.addAll(links(harness, network, pieces, component, sensor, from)));
            }
        }
        return links;
    }

    private static List<SensorLink> links(
            Harness harness, Network network, Islands pieces, Component component, Sensor sensor, PointId signal) {
        List<SensorLink> links = new ArrayList<>();
        for (Component other : harness.components().all()) {
            if (!(other.device() instanceof ControlUnit unit)) {
                continue;
            }
            Optional<PointId> reference = reference(network, other, unit);
            for (Pin pin : unit.pins()) {
                Optional<PointId> at = network.index().terminal(other.id(), pin.name());
                if (pin.role().isInput()
                        && reference.isPresent()
                        && at.filter(point -> pieces.together(point, signal)).isPresent()) {
                    Optional<PointId> supply = network.index().terminal(component.id(), Sensor.SUPPLY);
                    links.add(new SensorLink(
                            component,
                            sensor,
                            other,
                            unit,
                            pin,
                            signal,
                            at.get(),
                            network.index()
                                    .terminal(component.id(), Sensor.RETURN)
                                    .filter(point -> pieces.together(point, reference.get())),
                            reference.get(),
                            supply,
                            supply.flatMap(point -> fedBy(network, pieces, other, unit, point))));
                }
            }
        }
        return links;
    }

    private static Optional<PointId> reference(Network network, Component unit, ControlUnit device) {
        return device.pinsOf(PinRole.SENSOR_RETURN)
                .findFirst()
                .or(() -> device.pinsOf(PinRole.GROUND).findFirst())
                .flatMap(pin -> network.index().terminal(unit.id(), pin.name()));
    }

    private static Optional<Pin> fedBy(
            Network network, Islands pieces, Component unit, ControlUnit device, PointId supply) {
        return device.pinsOf(PinRole.REFERENCE_SUPPLY)
                .filter(pin -> network.index()
                        .terminal(unit.id(), pin.name())
                        .filter(point -> pieces.together(point, supply))
                        .isPresent())
                .findFirst();
    }

    /** The reference supply its converter may go by: the one that feeds the sensor, else the unit's first. */
    Optional<Pin> referenceSupply() {
        return fed.or(() -> unit.pinsOf(PinRole.REFERENCE_SUPPLY).findFirst());
    }

    /** Every point its conductors matter between. */
    Set<PointId> points() {
        Set<PointId> points = new TreeSet<>(List.of(signal, at, reference));
        back.ifPresent(points::add);
        supply.ifPresent(points::add);
        return points;
    }
}
