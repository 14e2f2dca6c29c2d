package org.ohmloom.signal.wiring;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BusId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.signal.bus.wiring.BusWiringStudy;
import org.ohmloom.signal.unit.Joints;
import org.ohmloom.signal.way.Ways;
import org.ohmloom.tables.BusFigure;
import org.ohmloom.tables.BusLimit;
import org.ohmloom.tables.SignalTables;

/**
 * Wires the nodes of data buses: a trunk with stubs where no node is wired yet, else a stub from what is there to each new one. Units
 * with bus pins that are on no bus join the only one there is, or make one together.
 */
final class BusDraft {
    /** Bit rate of a bus nobody has entered, bit/s: common practice in vehicles, no source. */
    private static final double USUAL_BITS_PER_SECOND = 500_000;

    /** What the ends of a stub take from the length it may have, m: common practice, no source. */
    private static final double ENDS_METRES = 0.2;

    private final Harness harness;
    private final Joints joints;
    private final Places places;
    private final FreshIds fresh;
    private final SplicePlaces splicePlaces;
    private final SignalTables tables;
    private final List<BusMaking> makings = new ArrayList<>();
    private final List<DataBus> buses = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();
    private final Map<WireId, Wire> moved = new TreeMap<>();
    private final Map<DataBus.Node, BusMaking.Spot> jointsMade = new HashMap<>();

    BusDraft(
            Harness harness,
            Joints joints,
            Places places,
            FreshIds fresh,
            SplicePlaces splicePlaces,
            SignalTables tables) {
        this.harness = harness;
        this.joints = joints;
        this.places = places;
        this.fresh = fresh;
        this.splicePlaces = splicePlaces;
        this.tables = tables;
    }

    List<BusMaking> makings() {
        return makings;
    }

    /** Buses that are new, have a node more, or got their terminations. */
    List<DataBus> buses() {
        return buses;
    }

    /** Wires that were at the pins of a node and now end at splices beside it. */
    Collection<Wire> moved() {
        return moved.values();
    }

    List<String> problems() {
        return problems;
    }

    void make() {
        List<DataBus> known = new ArrayList<>(harness.buses().all());
        List<DataBus.Node> others = onNoBus();
        boolean anyFree = others.stream().anyMatch(this::isFree);
        if (anyFree && known.size() == 1) {
            List<DataBus.Node> nodes = new ArrayList<>(known.get(0).nodes());
            others.stream().filter(this::isFree).forEach(nodes::add);
            known.set(0, known.get(0).joining(nodes));
        } else if (anyFree && known.isEmpty() && others.size() >= 2) {
            known.add(DataBus.of(
                    new BusId(fresh.next("CAN")), "Data bus", USUAL_BITS_PER_SECOND, DataBus.SHORT_BITS, others));
        } else if (anyFree && known.size() > 1) {
            problems.add(
                    "on which bus " + others.get(0).unit() + " is to be is for a person to choose: enter it as a node");
        }
        known.forEach(this::bus);
    }

    /** Units with pins for both lines that no bus names. */
    private List<DataBus.Node> onNoBus() {
        Set<ComponentId> named = new LinkedHashSet<>();
        harness.buses().all().forEach(bus -> bus.nodes().forEach(node -> named.add(node.unit())));
        List<DataBus.Node> nodes = new ArrayList<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit unit && !named.contains(component.id())) {
                Optional<Pin> high = unit.pinsOf(PinRole.BUS_HIGH).findFirst();
                Optional<Pin> low = unit.pinsOf(PinRole.BUS_LOW).findFirst();
                if (high.isPresent() && low.isPresent()) {
                    nodes.add(DataBus.Node.of(
                            component.id(), high.get().name(), low.get().name()));
                }
            }
        }
        return nodes;
    }

    private boolean isFree(DataBus.Node node) {
        return !joints.isJoined(node.unit(), node.high()) && !joints.isJoined(node.unit(), node.low());
    }

    private void bus(DataBus bus) {
        List<DataBus.Node> free = bus.nodes().stream().filter(this::isFree).toList();
        List<DataBus.Node> there = bus.nodes().stream()
                .filter(node -> joints.isJoined(node.unit(), node.high()) && joints.isJoined(node.unit(), node.low()))
                .toList();
        if (free.isEmpty() || bus.nodes().size() < 2) {
            return;
        }
        Optional<BusLimit> limits = tables.limit(BusWiringStudy.limitSet(bus, tables), bus.bitsPerSecond());
        boolean shielded =
                limits.flatMap(BusLimit::shield).filter("yes"::equals).isPresent();
        BusMaking making = new BusMaking(harness, places, splicePlaces, fresh, bus.name(), shielded);
        makings.add(making);
        DataBus wired = bus;
        if (there.isEmpty()) {
            double stub = limits.flatMap(BusLimit::stubMetres)
                    .map(each -> each.value())
                    .orElse(1.0);
            BusTrunk trunk = trunk(making, free, Math.max(0, stub - ENDS_METRES), shielded);
            if (bus.terminations().isEmpty()) {
                wired = bus.terminated(List.of(inside(free.get(trunk.first())), inside(free.get(trunk.last()))));
            }
        } else {
            free.forEach(node -> hang(making, node, there));
        }
        if (!harness.element(bus.id().value()).filter(wired::equals).isPresent()) {
            buses.add(wired);
        }
        problems.addAll(making.problems());
    }

    private DataBus.Termination inside(DataBus.Node node) {
        return DataBus.Termination.inside(tables.figure(BusFigure.TERMINATION).value(), node);
    }

    private BusTrunk trunk(BusMaking making, List<DataBus.Node> nodes, double stubMetres, boolean shielded) {
        List<BusMaking.Spot> spots = nodes.stream().map(this::spot).toList();
        BusTrunk trunk = BusTrunk.of(spots.stream().map(BusMaking.Spot::at).toList(), making.ways(), stubMetres);
        BusMaking.Spot here = spots.get(trunk.first());
        if (shielded) {
            here = grounded(making, here, nodes.get(trunk.first()));
        }
        for (BusTrunk.Passed passed : trunk.passed()) {
            BusMaking.Spot node = spots.get(passed.node());
            List<Ways.Step> way = way(making, here.at(), passed.leave());
            BusMaking.Spot joint = making.spliced(passed.leave(), way, node.assembly());
            making.run(here, joint, way);
            making.run(joint, node, way(making, passed.leave(), node.at()));
            here = joint;
        }
        BusMaking.Spot end = spots.get(trunk.last());
        making.run(here, end, way(making, here.at(), end.at()));
        return trunk;
    }

    private BusMaking.Spot spot(DataBus.Node node) {
        WireEnd high = places.end(node.unit(), node.high());
        WireEnd low = places.end(node.unit(), node.low());
        return new BusMaking.Spot(List.of(high, low, new WireEnd.Loose()), places.at(high), places.assembly(high));
    }

    /** The same with the drain on the nearest ground point: a shield is grounded once. */
    private BusMaking.Spot grounded(BusMaking making, BusMaking.Spot spot, DataBus.Node node) {
        Optional<GroundPoint> nearest =
                making.ways().nearest(spot.at(), harness.grounds().all(), GroundPoint::at);
        if (nearest.isEmpty()) {
            problems.add("the shield of the bus at " + node.unit()
                    + " is grounded nowhere: there is no ground point it can be reached from");
        }
        return nearest.map(ground -> new BusMaking.Spot(
                        List.of(spot.ends().get(0), spot.ends().get(1), new WireEnd.AtGround(ground.id())),
                        spot.at(),
                        spot.assembly()))
                .orElse(spot);
    }

    /** A new node on the nearest splices of both lines; on new ones at the nearest node that is wired where there are none. */
    private void hang(BusMaking making, DataBus.Node node, List<DataBus.Node> there) {
        BusMaking.Spot spot = spot(node);
        Optional<Splice> high =
                nearest(making, there.get(0).unit(), there.get(0).high(), spot.at());
        Optional<Splice> low = nearest(making, there.get(0).unit(), there.get(0).low(), spot.at());
        known(making, there.get(0));
        if (high.isEmpty() || low.isEmpty()) {
            DataBus.Node beside = there.stream()
                    .min(Comparator.comparingDouble(each ->
                            making.ways().metres(spot(each).at(), spot.at()).orElse(0)))
                    .orElseThrow();
            BusMaking.Spot joint = jointsMade.computeIfAbsent(beside, each -> spliced(making, each));
            making.run(joint, spot, way(making, joint.at(), spot.at()));
            return;
        }
        Optional<BreakoutId> at = splicePlaces.at(high.get());
        making.run(
                new BusMaking.Spot(
                        List.of(
                                new WireEnd.AtSplice(high.get().id()),
                                new WireEnd.AtSplice(low.get().id()),
                                new WireEnd.Loose()),
                        at,
                        high.get().assembly()),
                spot,
                way(making, at, spot.at()));
    }

    /** New splices of both lines beside the pins of a node, on which its wires go on. */
    private BusMaking.Spot spliced(BusMaking making, DataBus.Node node) {
        BusMaking.Spot pins = spot(node);
        BusMaking.Spot joint = making.spliced(pins.at(), List.of(), pins.assembly());
        List<String> names = List.of(node.high(), node.low());
        for (int line = 0; line < names.size(); line++) {
            List<WireEnd> old = harness.endsAt(node.unit(), names.get(line));
            WireEnd at = joint.ends().get(line);
            for (Wire each : harness.wires().all()) {
                Wire wire = moved.getOrDefault(each.id(), each);
                if (old.contains(wire.from()) || old.contains(wire.to())) {
                    moved.put(
                            wire.id(),
                            wire.unmeasured()
                                    .withEnds(
                                            old.contains(wire.from()) ? at : wire.from(),
                                            old.contains(wire.to()) ? at : wire.to()));
                }
            }
        }
        making.run(pins, joint, List.of());
        return joint;
    }

    /** Lines go on in the colours they have. */
    private void known(BusMaking making, DataBus.Node node) {
        List<String> names = List.of(node.high(), node.low());
        for (int line = 0; line < names.size(); line++) {
            List<WireEnd> ends = harness.endsAt(node.unit(), names.get(line));
            Optional<WireColour> colour = harness.wires().all().stream()
                    .filter(wire -> wire.ends().stream().anyMatch(ends::contains))
                    .findFirst()
                    .flatMap(Wire::colour);
            making.colour(line, colour);
        }
    }

    private Optional<Splice> nearest(BusMaking making, ComponentId unit, String pin, Optional<BreakoutId> to) {
        return harness.splices().all().stream()
                .filter(splice -> joints.isWith(unit, pin, new WireEnd.AtSplice(splice.id())))
                .min(Comparator.comparingDouble(splice ->
                        making.ways().metres(splicePlaces.at(splice), to).orElse(0)));
    }

    private List<Ways.Step> way(BusMaking making, Optional<BreakoutId> from, Optional<BreakoutId> to) {
        Optional<List<Ways.Step>> found = making.ways().way(from, to);
        if (found.isEmpty() && from.isPresent() && to.isPresent()) {
            problems.add("no way for the data bus from " + from.get() + " to " + to.get()
                    + ": a bundle segment is missing, or free cavities of the connectors on the way");
        }
        return found.orElse(List.of());
    }
}
