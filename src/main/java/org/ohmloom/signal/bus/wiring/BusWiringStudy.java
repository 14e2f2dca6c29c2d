package org.ohmloom.signal.bus.wiring;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.solve.LinearNetwork;
import org.ohmloom.tables.BusLimit;
import org.ohmloom.tables.SignalTables;

/** Works out how a data bus is wired, from the network as drawn and the lengths of the wires. */
public final class BusWiringStudy {

    private final Harness harness;
    private final Network network;
    private final Map<WireId, Double> lengths;
    private final SignalTables tables;
    private final DataBus bus;
    private final Optional<BusLimit> limits;
    private final Map<DataBus.Node, PointId> highs = new LinkedHashMap<>();
    private final Map<DataBus.Node, PointId> lows = new LinkedHashMap<>();
    private final List<BusProblem> problems = new ArrayList<>();

    private BusWiringStudy(
            Harness harness, Network network, Map<WireId, Double> lengths, SignalTables tables, DataBus bus) {
        this.harness = harness;
        this.network = network;
        this.lengths = lengths;
        this.tables = tables;
        this.bus = bus;
        this.limits = tables.limit(limitSet(bus, tables), bus.bitsPerSecond());
        for (DataBus.Node node : bus.nodes()) {
            network.index().terminal(node.unit(), node.high()).ifPresent(point -> highs.put(node, point));
            network.index().terminal(node.unit(), node.low()).ifPresent(point -> lows.put(node, point));
        }
    }

    /**
     * Studies one bus.
     *
     * @param harness the harness
     * @param network its network as drawn
     * @param lengths length of each wire where it is known, m
     * @param tables  limits and figures
     * @param bus     a bus of the harness
     */
    public static BusWiring of(
            Harness harness, Network network, SortedMap<WireId, Double> lengths, SignalTables tables, DataBus bus) {
        return new BusWiringStudy(harness, network, lengths, tables, bus).study();
    }

    /** The set of limits a bus is held against. */
    public static String limitSet(DataBus bus, SignalTables tables) {
        return bus.limits().orElseGet(() -> tables.limitSets().get(0));
    }

    private BusWiring study() {
        Optional<LineTree> high = line(highs);
        Optional<LineTree> low = line(lows);
        if (high.isEmpty() || low.isEmpty()) {
            bus.nodes()
                    .forEach(node -> problems.add(BusProblem.of(
                            BusProblem.Kind.NOT_JOINED,
                            SignalTexts.text("bus.not-joined", node.unit(), bus.id()),
                            List.of(node.unit()),
                            Joining.SOURCE)));
            return empty();
        }
        Joining joining = new Joining(bus, high.get(), low.get(), highs, lows);
        problems.addAll(joining.problems());
        List<Optional<PointId>> highEnds = bus.terminations().stream()
                .map(each -> BusPlan.point(network, each.high()))
                .toList();
        Optional<BusPlan> plan = BusPlan.of(
                high.get(), highs, highEnds.stream().flatMap(Optional::stream).toList());
        Set<WireId> wires = new TreeSet<>(high.get().wires());
        wires.addAll(low.get().wires());
        List<WireId> unmeasured =
                wires.stream().filter(wire -> !lengths.containsKey(wire)).toList();
        OptionalDouble loopOhms =
                plan.map(each -> loopOhms(each, high.get(), low.get())).orElse(OptionalDouble.empty());
        PairCheck pair = new PairCheck(harness, bus, high.get(), low.get(), limits);
        LinearNetwork rest = rest(high.get(), low.get());
        List<NodePlace> places = bus.nodes().stream()
                .map(node -> place(node, joining, plan, high.get(), rest))
                .toList();
        double trunk = plan.map(each -> high.get().metres(each.trunk())).orElse(0.0);
        double stubs = plan.map(each -> high.get().metres(List.copyOf(each.branchesOffTrunk())))
                .orElse(0.0);
        double allowed = LineFormulas.allowedOhms(Math.max(1, bus.nodes().size()), tables);
        int nodes = LineFormulas.allowedNodes(tables);
        problems.addAll(
                new TerminationCheck(network, bus, limits, tables, high.get(), low.get(), plan, places).problems());
        problems.addAll(new LimitCheck(bus, limits, tables, plan, high.get(), places).problems(trunk, stubs, loopOhms));
        problems.addAll(pair.problems());
        return new BusWiring(
                bus,
                limits,
                places,
                farthest(high.get()),
                trunk,
                stubs,
                List.copyOf(wires),
                plan.map(each -> LineTree.wires(each.trunk())).orElse(List.of()),
                unmeasured,
                loopOhms,
                allowed,
                nodes,
                pair.untwisted(),
                problems);
    }

    private List<DataBus.Node> farthest(LineTree high) {
        List<PointId> points =
                highs.values().stream().filter(high::has).distinct().toList();
        return BusPlan.farthest(high, points).stream()
                .flatMap(point -> nodeAt(point).stream())
                .toList();
    }

    private Optional<DataBus.Node> nodeAt(PointId high) {
        return highs.entrySet().stream()
                .filter(each -> each.getValue().equals(high))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** The line that most of the pins are on; their first one is its root. */
    private Optional<LineTree> line(Map<DataBus.Node, PointId> pins) {
        LineTree most = null;
        long joined = 1;
        Set<PointId> seen = new HashSet<>();
        for (PointId point : pins.values()) {
            if (seen.contains(point)) {
                continue;
            }
            LineTree tree = LineTree.from(point, network, lengths);
            pins.values().stream().filter(tree::has).forEach(seen::add);
            long count = pins.values().stream().filter(tree::has).count();
            if (count > joined) {
                joined = count;
                most = tree;
            }
        }
        return Optional.ofNullable(most);
    }

    private OptionalDouble loopOhms(BusPlan plan, LineTree high, LineTree low) {
        Optional<PointId> first = lowOf(plan.first());
        Optional<PointId> last = lowOf(plan.last());
        return first.filter(low::has).isPresent() && last.filter(low::has).isPresent()
                ? OptionalDouble.of(LineTree.ohms(plan.trunk()) + LineTree.ohms(low.way(first.get(), last.get())))
                : OptionalDouble.empty();
    }

    /** The point of the low line that belongs to an end of the trunk. */
    private Optional<PointId> lowOf(PointId end) {
        return bus.terminations().stream()
                .filter(each ->
                        BusPlan.point(network, each.high()).filter(end::equals).isPresent())
                .findFirst()
                .flatMap(each -> BusPlan.point(network, each.low()))
                .or(() -> nodeAt(end).map(lows::get));
    }

    /** Both lines and the terminations between them. */
    private LinearNetwork rest(LineTree high, LineTree low) {
        Set<PointId> points = new LinkedHashSet<>();
        List<LinearNetwork.Link> links = new ArrayList<>();
        Set<Branch> all = new LinkedHashSet<>(high.branches());
        all.addAll(low.branches());
        for (Branch branch : all) {
            points.add(branch.from());
            points.add(branch.to());
            LineTree.ohms(branch)
                    .ifPresent(ohms -> links.add(new LinearNetwork.Link(branch.from(), branch.to(), ohms, 0)));
        }
        for (DataBus.Termination each : bus.terminations()) {
            Optional<PointId> from = BusPlan.point(network, each.high());
            Optional<PointId> to = BusPlan.point(network, each.low());
            if (from.isPresent() && to.isPresent() && !from.equals(to)) {
                points.add(from.get());
                points.add(to.get());
                links.add(new LinearNetwork.Link(from.get(), to.get(), each.ohms(), 0));
            }
        }
        return LinearNetwork.of((Collection<PointId>) points, links, () -> false);
    }

    private NodePlace place(
            DataBus.Node node, Joining joining, Optional<BusPlan> plan, LineTree high, LinearNetwork rest) {
        if (!joining.isJoined(node) || plan.isEmpty()) {
            return NodePlace.notJoined(node.unit());
        }
        PointId at = highs.get(node);
        PointId back = lows.get(node);
        List<Branch> stub = plan.get().stubs().getOrDefault(node, List.of());
        return new NodePlace(
                node.unit(),
                true,
                OptionalDouble.of(plan.get().along().getOrDefault(plan.get().leaves(high, at), 0.0)),
                OptionalDouble.of(high.metres(stub)),
                !at.equals(back) && rest.together(at, back)
                        ? OptionalDouble.of(Math.abs(rest.ofDraw(at, back).along(at, back)))
                        : OptionalDouble.empty());
    }

    private BusWiring empty() {
        return new BusWiring(
                bus,
                limits,
                bus.nodes().stream()
                        .map(node -> NodePlace.notJoined(node.unit()))
                        .toList(),
                List.of(),
                0,
                0,
                List.of(),
                List.of(),
                List.of(),
                OptionalDouble.empty(),
                LineFormulas.allowedOhms(Math.max(1, bus.nodes().size()), tables),
                LineFormulas.allowedNodes(tables),
                List.of(),
                problems);
    }
}
