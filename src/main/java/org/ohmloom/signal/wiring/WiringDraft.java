package org.ohmloom.signal.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Device;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Place;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.signal.unit.DrivenCurrent;
import org.ohmloom.signal.unit.Joints;
import org.ohmloom.signal.way.Ways;
import org.ohmloom.tables.WireTables;

/** Gathers what each pin must reach and makes the lines, pin by pin. */
final class WiringDraft {
    private final Harness harness;
    private final Joints joints;
    private final Places places;
    private final Ways ways;
    private final FreshIds fresh;
    private final ColourScheme colours;
    private final SplicePlaces splicePlaces;
    private final WireTables tables = WireTables.bundled();
    private final Map<ComponentId, CableId> cableOf = new HashMap<>();
    private final List<Wire> wires = new ArrayList<>();
    private final List<Splice> splices = new ArrayList<>();
    private final List<Cable> cables = new ArrayList<>();
    private final List<Component> fuses = new ArrayList<>();
    private final List<DataBus> buses = new ArrayList<>();
    private final List<Wire> moved = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();

    WiringDraft(Harness harness) {
        this.harness = harness;
        this.joints = Joints.of(harness);
        this.places = new Places(harness);
        this.ways = new Ways(harness, connector -> places.freeCavity(connector).isPresent());
        this.fresh = new FreshIds(harness);
        this.colours = new ColourScheme(harness);
        this.splicePlaces = new SplicePlaces(harness, fresh);
    }

    WiringMade made() {
        return new WiringMade(wires, splices, cables, fuses, buses, moved, problems);
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
        cables.add(Cable.pair(id, name, shielded, assembly));
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
        List<Ways.Step> way =
                way(places.at(places.end(unit.id(), pin)), " (" + unit.id() + "." + pin + ")", at, circuit);
        return new LineTarget(end, at, way, signalClass, circuit, cable, assembly);
    }

    /** The way between two places; a problem where there is none though both are known. */
    private List<Ways.Step> way(Optional<BreakoutId> from, String ofPin, Optional<BreakoutId> to, String circuit) {
        Optional<List<Ways.Step>> found = ways.way(from, to);
        if (found.isEmpty() && from.isPresent() && to.isPresent()) {
            problems.add("no way from " + from.get() + ofPin + " to " + to.get() + " (" + circuit
                    + "): a bundle segment is missing, or a free cavity of the connectors on the way");
        }
        return found.orElse(List.of());
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
        if (!high) {
            feed(served, other, end);
            return;
        }
        Optional<GroundPoint> ground =
                ways.nearest(places.at(end), harness.grounds().all(), GroundPoint::at);
        if (ground.isEmpty()) {
            problems.add(served.id() + "." + other
                    + " is joined to nothing: a ground point it can be reached from is for a person to choose");
            return;
        }
        WireEnd earth = new WireEnd.AtGround(ground.get().id());
        LineMaking making = making(SignalClass.RETURN, served.name());
        making.from(
                end,
                List.of(new LineTarget(
                        earth,
                        ground.get().at(),
                        ways.way(places.at(end), ground.get().at()).orElse(List.of()),
                        SignalClass.RETURN,
                        served.name(),
                        Optional.empty(),
                        places.assembly(end))));
        finish(making, SignalClass.RETURN);
    }

    /** The fused feed of what a low-side output switches. */
    private void feed(Component served, String terminal, WireEnd end) {
        LineMaking tap = making(SignalClass.FEED, served.name());
        LineMaking line = making(SignalClass.FEED, served.name());
        Optional<Component> fuse = new FeedMaking(harness, joints, places, ways, fresh, tables)
                .make(end, served.name(), DrivenCurrent.ofAmps(served, harness), tap, line);
        fuse.ifPresentOrElse(
                made -> {
                    fuses.add(made);
                    finish(tap, SignalClass.FEED);
                    finish(line, SignalClass.FEED);
                },
                () -> problems.add(served.id() + "." + terminal + " is joined to nothing: a fused feed of its own is"
                        + " for a person to choose, as there is no fuse with studs it could be put beside"));
    }

    /** Leads a feed to the supply pins of a unit. */
    void feed(Component unit, WireEnd.AtTerminal from) {
        WireEnd root = places.end(from.component(), from.terminal());
        String circuit = unit.name() + " feed";
        List<LineTarget> targets = new ArrayList<>();
        ((ControlUnit) unit.device())
                .pinsOf(PinRole.SUPPLY)
                .forEach(pin -> targets.add(toPin(unit, pin.name(), root, SignalClass.FEED, circuit)));
        if (!targets.isEmpty()) {
            LineMaking making = making(SignalClass.FEED, circuit);
            making.from(root, targets);
            finish(making, SignalClass.FEED);
        }
    }

    /** Leads each ground pin of a unit to a ground point. */
    void ground(Component unit, GroundPoint ground) {
        WireEnd earth = new WireEnd.AtGround(ground.id());
        String circuit = unit.name() + " ground";
        ((ControlUnit) unit.device()).pinsOf(PinRole.GROUND).forEach(pin -> {
            LineMaking making = making(SignalClass.RETURN, circuit);
            making.from(
                    earth,
                    ground.at(),
                    places.assembly(places.end(unit.id(), pin.name())),
                    List.of(toPin(unit, pin.name(), earth, SignalClass.RETURN, circuit)));
            finish(making, SignalClass.RETURN);
        });
    }

    private LineTarget toPin(Component unit, String pin, WireEnd from, SignalClass signalClass, String circuit) {
        WireEnd end = places.end(unit.id(), pin);
        Optional<BreakoutId> at = places.at(end);
        List<Ways.Step> way = way(places.at(from), "", at, circuit);
        return new LineTarget(end, at, way, signalClass, circuit, Optional.empty(), places.assembly(end));
    }

    private LineMaking making(SignalClass signalClass, String circuit) {
        return new LineMaking(harness, places, fresh, splicePlaces, signalClass, circuit);
    }

    private void make(Component unit, Pin pin, List<LineTarget> targets) {
        if (targets.isEmpty()) {
            return;
        }
        WireEnd root = places.end(unit.id(), pin.name());
        SignalClass signalClass = signalClass(unit, pin.name());
        if (joints.isJoined(unit.id(), pin.name())) {
            join(unit, pin, root, signalClass, targets);
            return;
        }
        String circuit = targets.size() == 1 ? targets.get(0).circuit() : unit.name() + " " + pin.name();
        LineMaking making = making(signalClass, circuit);
        making.from(root, targets);
        finish(making, signalClass);
    }

    /** More ends for a pin that has wires already: from the nearest splice of its line, else from a new one beside the pin. */
    private void join(Component unit, Pin pin, WireEnd root, SignalClass signalClass, List<LineTarget> targets) {
        if (signalClass != SignalClass.REFERENCE_SUPPLY && signalClass != SignalClass.REFERENCE_RETURN) {
            problems.add(unit.id() + "." + pin.name() + " has wires already and takes no more: plan "
                    + targets.stream().map(LineTarget::circuit).distinct().toList() + " onto another pin");
            return;
        }
        List<Wire> there = harness.wires().all().stream()
                .filter(wire -> wire.ends().contains(root))
                .toList();
        LineMaking making = making(signalClass, unit.name() + " " + pin.name());
        Optional<Splice> known = harness.splices().all().stream()
                .filter(splice -> joints.isWith(unit.id(), pin.name(), new WireEnd.AtSplice(splice.id())))
                .min(Comparator.comparingDouble(splice -> targets.stream()
                        .mapToDouble(target -> ways.metres(splicePlaces.at(splice), target.at())
                                .orElse(0))
                        .sum()));
        Splice joint = known.orElseGet(() -> {
            Splice made = splicePlaces.splice(
                    unit.name() + " " + pin.name(), places.at(root).map(Place.AtBreakout::new), places.assembly(root));
            WireEnd at = new WireEnd.AtSplice(made.id());
            there.forEach(wire -> moved.add(wire.unmeasured()
                    .withEnds(
                            wire.from().equals(root) ? at : wire.from(),
                            wire.to().equals(root) ? at : wire.to())));
            splices.add(made);
            making.from(
                    root,
                    List.of(new LineTarget(
                            at,
                            places.at(root),
                            List.of(),
                            signalClass,
                            unit.name() + " " + pin.name(),
                            Optional.empty(),
                            places.assembly(root))));
            return made;
        });
        Optional<BreakoutId> from = known.flatMap(splicePlaces::at).or(() -> places.at(root));
        making.from(
                new WireEnd.AtSplice(joint.id()),
                from,
                joint.assembly(),
                targets.stream()
                        .map(target -> target.along(ways.way(from, target.at()).orElse(List.of())))
                        .toList());
        finish(making, signalClass, there.stream().findFirst().flatMap(Wire::colour));
    }

    private void finish(LineMaking making, SignalClass signalClass) {
        finish(making, signalClass, Optional.empty());
    }

    private void finish(LineMaking making, SignalClass signalClass, Optional<WireColour> known) {
        List<Wire> line = making.wires().stream()
                .filter(wire -> wire.signalClass() != SignalClass.SHIELD)
                .toList();
        if (!line.isEmpty()) {
            WireColour colour = known.orElseGet(() -> colours.next(signalClass, line));
            making.wires()
                    .forEach(wire -> wires.add(
                            wire.signalClass() == SignalClass.SHIELD ? wire : wire.withColour(Optional.of(colour))));
        }
        splices.addAll(making.splices());
        problems.addAll(making.problems());
    }

    /** Wires the data buses. */
    void buses() {
        BusDraft draft = new BusDraft(harness, joints, places, fresh, splicePlaces, tables.signals());
        draft.make();
        for (BusMaking making : draft.makings()) {
            for (int number = 0; number < making.wires().size(); number++) {
                List<Wire> line = making.wires().get(number);
                boolean shield = line.isEmpty() || line.get(0).signalClass() == SignalClass.SHIELD;
                Optional<WireColour> beside =
                        number == 0 ? Optional.empty() : making.colours().get(0);
                Optional<WireColour> colour = shield
                        ? Optional.empty()
                        : making.colours()
                                .get(number)
                                .or(() -> Optional.of(colours.next(SignalClass.DATA_BUS, line, beside)));
                making.colour(number, colour);
                line.forEach(wire -> wires.add(colour.isPresent() ? wire.withColour(colour) : wire));
            }
            splices.addAll(making.splices());
            cables.addAll(making.cables());
        }
        buses.addAll(draft.buses());
        moved.addAll(draft.moved());
        problems.addAll(draft.problems());
    }
}
