package org.ohmloom.ground.sensor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.SensorInputs;
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
        SensorInputs inputs = SensorInputs.of(network);
        List<SensorLink> links = new ArrayList<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Sensor sensor) {
                for (Component unit : harness.components().all()) {
                    if (unit.device() instanceof ControlUnit device) {
                        reference(inputs, unit, device).ifPresent(reference -> device.pins().stream()
                                .filter(pin -> inputs.reads(unit, pin, component))
                                .forEach(
                                        pin -> links.add(of(inputs, component, sensor, unit, device, pin, reference))));
                    }
                }
            }
        }
        return links;
    }

    private static SensorLink of(
            SensorInputs inputs,
            Component component,
            Sensor sensor,
            Component unit,
            ControlUnit device,
            Pin pin,
            PointId reference) {
        return new SensorLink(
                component,
                sensor,
                unit,
                device,
                pin,
                inputs.point(component, Sensor.SIGNAL).orElseThrow(),
                inputs.point(unit, pin.name()).orElseThrow(),
                inputs.point(component, Sensor.RETURN)
                        .filter(point -> inputs.joined(Optional.of(point), Optional.of(reference))),
                reference,
                inputs.point(component, Sensor.SUPPLY),
                inputs.fedBy(unit, device, component));
    }

    private static Optional<PointId> reference(SensorInputs inputs, Component unit, ControlUnit device) {
        return device.pinsOf(PinRole.SENSOR_RETURN)
                .findFirst()
                .or(() -> device.pinsOf(PinRole.GROUND).findFirst())
                .flatMap(pin -> inputs.point(unit, pin.name()));
    }

    /** The reference supply its converter may go by: the one that feeds the sensor, else the unit's first. */
    Optional<Pin> referenceSupply() {
        return SensorInputs.comparedWith(fed, unit);
    }

    /** Every point its conductors matter between. */
    Set<PointId> points() {
        Set<PointId> points = new TreeSet<>(List.of(signal, at, reference));
        back.ifPresent(points::add);
        supply.ifPresent(points::add);
        return points;
    }
}
