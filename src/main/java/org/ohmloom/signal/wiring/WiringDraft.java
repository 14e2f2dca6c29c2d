package org.ohmloom.signal.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Place;
import org.ohmloom.model.Relay;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.signal.unit.Joints;

/** Gathers what each pin must reach and makes the lines, pin by pin. */
final class WiringDraft {
    private final Harness harness;
    private final Joints joints;
    private final Places places;
    private final Ways ways;
    private final FreshIds fresh;
    private final ColourScheme colours;
    private final Map<SegmentId, Integer> splicesOn = new HashMap<>();
    private final Map<ComponentId, CableId> cableOf = new HashMap<>();
    private final List<Wire> wires = new ArrayList<>();
    private final List<Splice> splices = new ArrayList<>();
    private final List<Cable> cables = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();

    WiringDraft(Harness harness) {
        this.harness = harness;
        this.joints = Joints.of(harness);
        this.places = new Places(harness);
        this.ways = new Ways(harness, connector -> places.freeCavity(connector).isPresent());
        this.fresh = new FreshIds(harness);
        this.colours = new ColourScheme(harness);
        harness.splices().all().forEach(splice -> splice.place().ifPresent(place -> {
            if (place instanceof Place.OnSegment on) {
                splicesOn.merge(on.segment(), 1, Integer::sum);
            }
        }));
    }

    WiringMade made() {
        return new WiringMade(wires, splices, cables, problems);
    }

    /** Makes the lines of all channels of a unit. */
    void unit(Component component, ControlUnit unit) {
        Map<String, List<LineTarget>> targets = new LinkedHashMap<>();
        unit.pins().forEach(pin -> targets.put(pin.name(), new ArrayList<>()));
        for (Channel channel : unit.channels()) {
            Component served = harness.components().get(channel.component());
            if (served.device() instanceof Sensor sensor) {
                pair(served, sensor, channel, component);
                reach(targets, component, channel.pin(), served, Sensor.SIGNAL);
                channel.supplyPin().ifPresent(pin -> reach(targets, component, pin, served, Sensor.SUPPLY));
                channel.returnPin().ifPresent(pin -> {
                    reach(targets, component, pin, served, Sensor.RETURN);
                    drain(targets, component, pin, served, sensor);
                });
            } else {
                output(targets, component, unit.pin(channel.pin()).orElseThrow(), served);
            }
        }
        unit.pins().forEach(pin -> make(component, pin, targets.get(pin.name())));
    }

    private static boolean isPulsed(Sensor sensor) {
        return sensor.kind() == Sensor.Kind.HALL || sensor.kind() == Sensor.Kind.VARIABLE_RELUCTANCE;
    }

    private static boolean isShielded(Sensor sensor) {
        return sensor.kind() == Sensor.Kind.VARIABLE_RELUCTANCE || sensor.kind() == Sensor.Kind.THERMOCOUPLE;
    }

    /** A twisted pair for signal and return of a sensor that gives pulses or little voltage, when neither is there yet. */
    private void pair(Component served, Sensor sensor, Channel channel, Component unit) {
        boolean unwired = !joints.isJoined(served.id(), Sensor.SIGNAL)
                && !joints.isJoined(served.id(), Sensor.RETURN)
                && channel.returnPin().isPresent();
        if (unwired && (isPulsed(sensor) || isShielded(sensor))) {
            cableOf.put(
                    served.id(),
                    cable(
                            served.name() + " to " + unit.name(),
                            isShielded(sensor),
                            places.assembly(places.end(served.id(), Sensor.SIGNAL))));
        }
    }

    private CableId cable(String name, boolean shielded, Optional<AssemblyId> assembly) {
        CableId id = new CableId(fresh.next("C"));
        cables.add(new Cable(
                id,
                name,
                Cable.Kind.TWISTED_PAIR,
                shielded,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                assembly));
        return id;
    }

    private void drain(
            Map<String, List<LineTarget>> targets, Component unit, String pin, Component served, Sensor sensor) {
        if (isShielded(sensor) && cableOf.containsKey(served.id())) {
            WireEnd beside = places.end(served.id(), Sensor.RETURN);
            targets.get(pin)
                    .add(target(
                            unit,
                            pin,
                            new WireEnd.Loose(),
                            places.at(beside),
                            SignalClass.SHIELD,
                            "shield of " + served.name(),
                            Optional.of(cableOf.get(served.id())),
                            places.assembly(beside)));
        }
    }

    private void reach(
            Map<String, List<LineTarget>> targets, Component unit, String pin, Component served, String terminal) {
        if (joints.with(unit.id(), pin).contains(Joints.terminal(served.id(), terminal))) {
            return;
        }
        if (joints.isJoined(served.id(), terminal)) {
            problems.add(served.id() + "." + terminal + " is wired to something else than " + unit.id() + "." + pin
                    + " of the plan: take that wire out or lock the channel to its pin");
            return;
        }
        WireEnd end = places.end(served.id(), terminal);
        Optional<CableId> cable =
                terminal.equals(Sensor.SUPPLY) ? Optional.empty() : Optional.ofNullable(cableOf.get(served.id()));
        targets.get(pin)
                .add(target(
                        unit,
                        pin,
                        end,
                        places.at(end),
                        signalClass(unit, pin),
                        served.name(),
                        cable,
                        places.assembly(end)));
    }

    private LineTarget target(
            Component unit,
            String pin,
            WireEnd end,
            Optional<BreakoutId> at,
            SignalClass signalClass,
            String circuit,
            Optional<CableId> cable,
            Optional<AssemblyId> assembly) {
        Optional<BreakoutId> from = places.at(places.end(unit.id(), pin));
        List<Ways.Step> way = List.of();
        if (from.isPresent() && at.isPresent()) {
            Optional<List<Ways.Step>> found = ways.way(from.get(), at.get());
            if (found.isEmpty()) {
                problems.add("no way from " + from.get() + " (" + unit.id() + "." + pin + ") to " + at.get() + " ("
                        + circuit + "): a bundle segment is missing, or a free cavity of the connectors on the way");
            }
            way = found.orElse(List.of());
        }
        return new LineTarget(end, at, way, signalClass, circuit, cable, assembly);
    }

    private SignalClass signalClass(Component unit, String pin) {
        PinRole role = ((ControlUnit) unit.device()).pin(pin).orElseThrow().role();
        return switch (role) {
            case REFERENCE_SUPPLY -> SignalClass.REFERENCE_SUPPLY;
            case SENSOR_RETURN -> SignalClass.REFERENCE_RETURN;
            case FREQUENCY_INPUT -> SignalClass.PULSE_SIGNAL;
            case HIGH_SIDE_OUTPUT, LOW_SIDE_OUTPUT -> SignalClass.SWITCHED_OUTPUT;
            case BUS_HIGH, BUS_LOW -> SignalClass.DATA_BUS;
            default -> SignalClass.ANALOGUE_SIGNAL;
        };
    }

    private void output(Map<String, List<LineTarget>> targets, Component unit, Pin pin, Component served) {
        boolean relay = served.device() instanceof Relay;
        String plus = relay ? Relay.COIL_B : Device.POSITIVE;
        String minus = relay ? Relay.COIL_A : Device.NEGATIVE;
        boolean high = pin.role() == PinRole.HIGH_SIDE_OUTPUT;
        reach(targets, unit, pin.name(), served, high ? plus : minus);
        String other = high ? minus : plus;
        if (joints.isJoined(served.id(), other)) {
            return;
        }
        WireEnd end = places.end(served.id(), other);
        Optional<GroundPoint> ground = high ? nearest(end) : Optional.empty();
        if (ground.isEmpty()) {
            problems.add(served.id() + "." + other + " is joined to nothing: "
                    + (high ? "a ground point it can be reached from" : "a fused feed of its own")
                    + " is for a person to choose");
            return;
        }
        WireEnd earth = new WireEnd.AtGround(ground.get().id());
        LineMaking making = making(SignalClass.RETURN, served.name());
        making.from(
                end,
                places.at(end),
                places.assembly(end),
                List.of(new LineTarget(
                        earth,
                        ground.get().at(),
                        ways.way(places.at(end).orElseThrow(), ground.get().at().orElseThrow())
                                .orElse(List.of()),
                        SignalClass.RETURN,
                        served.name(),
                        Optional.empty(),
                        places.assembly(end))));
        finish(making, SignalClass.RETURN);
    }

    private Optional<GroundPoint> nearest(WireEnd end) {
        Map<GroundPoint, Double> metres = new LinkedHashMap<>();
        places.at(end).ifPresent(from -> harness.grounds().all().forEach(ground -> ground.at()
                .map(at -> ways.metres(from, at))
                .ifPresent(found -> found.ifPresent(length -> metres.put(ground, length)))));
        return metres.keySet().stream().min(Comparator.comparingDouble(metres::get));
    }

    private LineMaking making(SignalClass signalClass, String circuit) {
        return new LineMaking(harness, places, fresh, splicesOn, signalClass, circuit);
    }

    private void make(Component unit, Pin pin, List<LineTarget> targets) {
        if (targets.isEmpty()) {
            return;
        }
        WireEnd root = places.end(unit.id(), pin.name());
        SignalClass signalClass = signalClass(unit, pin.name());
        if (joints.isJoined(unit.id(), pin.name())) {
            problems.add(unit.id() + "." + pin.name() + " has wires already; "
                    + targets.stream().map(LineTarget::circuit).distinct().toList()
                    + " would have to join a splice there: put one in, or plan these sensors onto another pin");
            return;
        }
        String circuit = targets.size() == 1 ? targets.get(0).circuit() : unit.name() + " " + pin.name();
        LineMaking making = making(signalClass, circuit);
        making.from(root, places.at(root), places.assembly(root), targets);
        finish(making, signalClass);
    }

    private void finish(LineMaking making, SignalClass signalClass) {
        List<Wire> line = making.wires().stream()
                .filter(wire -> wire.signalClass() != SignalClass.SHIELD)
                .toList();
        if (!line.isEmpty()) {
            WireColour colour = colours.next(signalClass, line);
            making.wires()
                    .forEach(wire -> wires.add(
                            wire.signalClass() == SignalClass.SHIELD ? wire : wire.withColour(Optional.of(colour))));
        }
        splices.addAll(making.splices());
        problems.addAll(making.problems());
    }

    /** Joins the bus pins of two units as a twisted pair; the trunk of more units is for a person. */
    void bus(List<Component> units) {
        List<Component> nodes = units.stream()
                .filter(unit -> busPin(unit, PinRole.BUS_HIGH).isPresent()
                        && busPin(unit, PinRole.BUS_LOW).isPresent())
                .toList();
        List<Component> free = nodes.stream()
                .filter(unit -> !joints.isJoined(
                                unit.id(), busPin(unit, PinRole.BUS_HIGH).orElseThrow())
                        && !joints.isJoined(
                                unit.id(), busPin(unit, PinRole.BUS_LOW).orElseThrow()))
                .toList();
        if (nodes.size() < 2 || free.isEmpty()) {
            return;
        }
        if (nodes.size() > 2 || free.size() < 2) {
            problems.add("the data bus of " + nodes.size() + " units is not wired: where its trunk runs and where"
                    + " it is terminated is for a person to choose");
            return;
        }
        Component one = free.get(0);
        Component other = free.get(1);
        CableId pair = cable("Data bus", false, places.assembly(places.end(one.id(), pin(one, PinRole.BUS_HIGH))));
        for (PinRole role : List.of(PinRole.BUS_HIGH, PinRole.BUS_LOW)) {
            WireEnd from = places.end(one.id(), pin(one, role));
            WireEnd to = places.end(other.id(), pin(other, role));
            LineMaking making = making(SignalClass.DATA_BUS, "data bus");
            making.from(
                    from,
                    places.at(from),
                    places.assembly(from),
                    List.of(target(
                            one,
                            pin(one, role),
                            to,
                            places.at(to),
                            SignalClass.DATA_BUS,
                            "data bus",
                            Optional.of(pair),
                            places.assembly(to))));
            finish(making, SignalClass.DATA_BUS);
        }
    }

    private static Optional<String> busPin(Component unit, PinRole role) {
        return ((ControlUnit) unit.device()).pinsOf(role).map(Pin::name).findFirst();
    }

    private static String pin(Component unit, PinRole role) {
        return busPin(unit, role).orElseThrow();
    }
}
