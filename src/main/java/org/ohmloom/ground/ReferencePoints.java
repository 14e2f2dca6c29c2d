package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.graph.Passages;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.ReadingUnits;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;

/**
 * Finds the reference points of a harness.
 *
 * <p>Nodes of one bus are the control units with a bus pin that the bus wires join, wires of the high line and of the low line
 * alike; the first in the order of identities is the one the others are measured against. Points that are one with their
 * reference have no offset and are left out.
 */
public final class ReferencePoints {

    private final Network network;
    private final Harness harness;
    private final List<ReferencePoint> points = new ArrayList<>();

    private ReferencePoints(Network network, Harness harness) {
        this.network = network;
        this.harness = harness;
    }

    /**
     * The reference points: control units, sensors, bus nodes, ground points, each in the order of identities.
     *
     * @param network the harness as drawn
     * @param harness the harness
     */
    public static List<ReferencePoint> of(Network network, Harness harness) {
        ReferencePoints found = new ReferencePoints(network, harness);
        NetworkBuilder.firstSource(harness).ifPresent(found::againstSource);
        found.sensors();
        found.buses();
        NetworkBuilder.firstSource(harness).ifPresent(found::grounds);
        found.points.removeIf(point -> point.at().equals(point.reference()));
        return Collections.unmodifiableList(found.points);
    }

    private void againstSource(Component source) {
        Optional<PointId> datum = network.index().terminal(source.id(), Device.NEGATIVE);
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit unit && datum.isPresent()) {
                ground(component, unit)
                        .ifPresent(at -> points.add(new ReferencePoint(
                                ReferencePoint.Kind.UNIT_GROUND, component.id(), at, datum.get(), source.id())));
            }
        }
    }

    private Optional<PointId> ground(Component component, ControlUnit unit) {
        return ReadingUnits.rail(network, component.id(), unit, PinRole.GROUND);
    }

    private void sensors() {
        ReadingUnits.of(network, harness).all().values().forEach(reading -> reading.reference()
                .ifPresent(reference -> points.add(new ReferencePoint(
                        ReferencePoint.Kind.SENSOR_RETURN,
                        reading.sensor(),
                        reading.back(),
                        reference,
                        reading.unit()))));
    }

    private void buses() {
        Passages passages = new Passages(network);
        Map<Component, Set<PointId>> reached = new LinkedHashMap<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit unit) {
                Set<PointId> lines = new HashSet<>();
                unit.pins().stream().filter(ReferencePoints::isBus).forEach(pin -> network.index()
                        .terminal(component.id(), pin.name())
                        .ifPresent(lines::add));
                if (!lines.isEmpty()) {
                    reached.put(component, passages.reached(lines));
                }
            }
        }
        Set<Component> placed = new HashSet<>();
        for (Component first : reached.keySet()) {
            for (Component node : reached.keySet()) {
                boolean together = node != first
                        && !placed.contains(first)
                        && !placed.contains(node)
                        && !Collections.disjoint(lines(node), reached.get(first));
                if (together) {
                    placed.add(node);
                    node(first, node);
                }
            }
            placed.add(first);
        }
    }

    private List<PointId> lines(Component component) {
        return ((ControlUnit) component.device())
                .pins().stream()
                        .filter(ReferencePoints::isBus)
                        .flatMap(pin -> network.index().terminal(component.id(), pin.name()).stream())
                        .toList();
    }

    private void node(Component first, Component node) {
        Optional<PointId> reference = ground(first, (ControlUnit) first.device());
        Optional<PointId> at = ground(node, (ControlUnit) node.device());
        if (reference.isPresent() && at.isPresent()) {
            points.add(new ReferencePoint(
                    ReferencePoint.Kind.BUS_NODE_GROUND, node.id(), at.get(), reference.get(), first.id()));
        }
    }

    private static boolean isBus(Pin pin) {
        return pin.role() == PinRole.BUS_HIGH || pin.role() == PinRole.BUS_LOW;
    }

    private void grounds(Component source) {
        Optional<PointId> datum = network.index().terminal(source.id(), Device.NEGATIVE);
        for (GroundPoint ground : harness.grounds().all()) {
            Optional<PointId> at = network.index().ground(ground.id());
            if (at.isPresent() && datum.isPresent()) {
                points.add(new ReferencePoint(
                        ReferencePoint.Kind.GROUND_POINT, ground.id(), at.get(), datum.get(), source.id()));
            }
        }
    }
}
