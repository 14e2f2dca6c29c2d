package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * In which order the harness is joined in the vehicle: in-line pairs, then what it serves, control units after everything they
 * drive and read, then terminals on studs, batteries last of all and the negative terminal after every other. Common practice,
 * no source.
 */
final class MatingOrder {

    /** When a thing is joined. */
    enum Stage {
        IN_LINE("Mate the in-line connectors"),
        EQUIPMENT("Plug in loads, sensors and switching gear"),
        UNITS("Plug in control units, after all they drive and read"),
        TERMINALS("Fit the terminals on studs and screws"),
        SOURCES("Connect the batteries, last of all, negative after every other");

        private final String words;

        Stage(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /**
     * One joint to be made.
     *
     * @param stage when
     * @param what  the connector or terminal
     * @param name  what people call it
     * @param to    what it is joined to
     * @param wires the wires at a terminal, none for a connector
     * @param lock  part of the secondary lock, if any
     */
    record Joint(Stage stage, String what, String name, String to, List<Wire> wires, Optional<String> lock) {}

    private final Harness harness;

    MatingOrder(Harness harness) {
        this.harness = harness;
    }

    /** All joints in order; what only joins things that are in the vehicle already is left out. */
    List<Joint> joints() {
        List<Joint> joints = new ArrayList<>();
        for (Connector connector : harness.connectors().all()) {
            if (!connector.existing() && hasWire(connector)) {
                connector(connector).ifPresent(joints::add);
            }
        }
        joints.addAll(terminals());
        joints.sort(Comparator.comparing(Joint::stage)
                .thenComparing(joint -> isNegative(joint.what()))
                .thenComparing(Joint::what, NaturalOrder.INSTANCE));
        return List.copyOf(joints);
    }

    private boolean hasWire(Connector connector) {
        return harness.wires().all().stream()
                .flatMap(wire -> wire.ends().stream())
                .anyMatch(end ->
                        end instanceof WireEnd.AtCavity at && at.connector().equals(connector.id()));
    }

    private Optional<Joint> connector(Connector connector) {
        Optional<String> lock = connector.lock().map(part -> part.value());
        Optional<Connector> other = harness.mate(connector);
        if (other.isPresent()) {
            Connector mate = other.get();
            boolean once = mate.existing() || connector.id().compareTo(mate.id()) < 0;
            return once
                    ? Optional.of(new Joint(
                            Stage.IN_LINE, connector.id().value(), connector.name(), named(mate), List.of(), lock))
                    : Optional.empty();
        }
        return connector
                .component()
                .map(harness.components()::get)
                .map(component -> new Joint(
                        component.device() instanceof ControlUnit ? Stage.UNITS : Stage.EQUIPMENT,
                        connector.id().value(),
                        connector.name(),
                        named(component),
                        List.of(),
                        lock));
    }

    private static String named(Connector connector) {
        return connector.id() + " " + connector.name();
    }

    private static String named(Component component) {
        String kind = component.device() instanceof Sensor ? "sensor " : "";
        return kind + component.id() + " " + component.name();
    }

    private List<Joint> terminals() {
        TreeMap<String, List<Wire>> wiresByTerminal = new TreeMap<>(NaturalOrder.INSTANCE);
        TreeMap<String, Component> components = new TreeMap<>(NaturalOrder.INSTANCE);
        for (Wire wire : harness.wires().all()) {
            for (WireEnd end : wire.ends()) {
                if (!wire.existing() && end instanceof WireEnd.AtTerminal at) {
                    wiresByTerminal
                            .computeIfAbsent(end.text(), key -> new ArrayList<>())
                            .add(wire);
                    components.put(end.text(), harness.components().get(at.component()));
                }
            }
        }
        List<Joint> joints = new ArrayList<>();
        wiresByTerminal.forEach((text, wires) -> {
            Component component = components.get(text);
            boolean source = component.device() instanceof Battery;
            joints.add(new Joint(
                    source ? Stage.SOURCES : Stage.TERMINALS,
                    text,
                    component.name(),
                    named(component),
                    List.copyOf(wires),
                    Optional.empty()));
        });
        return joints;
    }

    private static boolean isNegative(String terminal) {
        return terminal.endsWith(".-");
    }
}
