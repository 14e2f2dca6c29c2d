package org.ohmloom.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.WireId;

/**
 * Which loads each output of a harness switches, found from the connections alone.
 *
 * <p>An output switches a load when the load reaches a source's positive and negative terminal through conductors, contacts
 * and devices that can close, and no longer does so without the output. A diode, alone or in a battery isolator, leads from
 * its anode to its cathode only.
 */
public final class SwitchedLoads {

    /**
     * A load behind an output.
     *
     * @param output       branch of the output
     * @param load         the load
     * @param highSide     whether the output stands in its feed; otherwise it stands in its return
     * @param feedWires    wires of its shortest feed, from the protective device next to the load on, in the direction of the
     *                     current
     * @param returnWires  wires of its shortest return up to the output in it; empty for a high-side output
     */
    public record SwitchedLoad(
            BranchId output, ComponentId load, boolean highSide, List<WireId> feedWires, List<WireId> returnWires) {
        public SwitchedLoad {
            feedWires = List.copyOf(feedWires);
            returnWires = List.copyOf(returnWires);
        }
    }

    private final Network network;
    private final Adjacency passages;
    private final Set<PointId> positives = new HashSet<>();
    private final Set<PointId> negatives = new HashSet<>();

    /** Which way a search goes along the current. */
    private enum Along {
        /** From positive terminals on, or from a load's return on. */
        DOWNSTREAM,
        /** From negative terminals back, or from a load's feed back. */
        UPSTREAM;

        /** Whether it may leave a point over a branch: a diode leads one way. */
        boolean leaves(PointId point, Branch branch) {
            return branch.kind() != BranchKind.DIODE || point.equals(this == DOWNSTREAM ? branch.from() : branch.to());
        }
    }

    private SwitchedLoads(Network network) {
        this.network = network;
        this.passages = Adjacency.of(network, branch -> branch.kind().isPassage());
        for (Branch branch : network.branches().values()) {
            if (branch.kind() == BranchKind.SOURCE) {
                positives.add(branch.to());
                negatives.add(branch.from());
            }
        }
    }

    /**
     * Finds the loads of all outputs.
     *
     * @param network the network in any operating state
     */
    public static List<SwitchedLoad> of(Network network) {
        return new SwitchedLoads(network).find();
    }

    /**
     * The wires of a load's shortest feed, from the protective device next to it on; empty when nothing feeds it.
     *
     * @param network the network in any operating state
     * @param load    the load
     */
    public static List<WireId> feed(Network network, ComponentId load) {
        SwitchedLoads loads = new SwitchedLoads(network);
        return network.of(load).stream()
                .filter(branch -> branch.kind() == BranchKind.LOAD)
                .findFirst()
                .map(loads::feedWires)
                .orElse(List.of());
    }

    /** Whether a branch is an output. */
    public static boolean isOutput(Branch branch) {
        return branch.kind() == BranchKind.SOLID_STATE_OUTPUT || branch.kind() == BranchKind.OUTPUT_PIN;
    }

    private List<SwitchedLoad> find() {
        List<SwitchedLoad> found = new ArrayList<>();
        Set<PointId> fed = reached(positives, Along.DOWNSTREAM, branch -> true);
        Set<PointId> returned = reached(negatives, Along.UPSTREAM, branch -> true);
        for (Branch output : network.branches().values()) {
            if (isOutput(output)) {
                Set<PointId> fedWithout = reached(positives, Along.DOWNSTREAM, branch -> branch != output);
                Set<PointId> returnedWithout = reached(negatives, Along.UPSTREAM, branch -> branch != output);
                for (Branch load : network.branches().values()) {
                    boolean works =
                            load.kind() == BranchKind.LOAD && fed.contains(load.from()) && returned.contains(load.to());
                    boolean highSide = !fedWithout.contains(load.from());
                    if (works && (highSide || !returnedWithout.contains(load.to()))) {
                        found.add(behind(output, load, highSide));
                    }
                }
            }
        }
        return Collections.unmodifiableList(found);
    }

    private SwitchedLoad behind(Branch output, Branch load, boolean highSide) {
        return new SwitchedLoad(
                output.id(),
                FeedRules.component(load).orElseThrow(),
                highSide,
                feedWires(load),
                highSide ? List.of() : wires(way(load.to(), negatives, Along.DOWNSTREAM), branch -> branch == output));
    }

    private List<WireId> feedWires(Branch load) {
        List<WireId> wires =
                new ArrayList<>(wires(way(load.from(), positives, Along.UPSTREAM), FeedRules::isProtective));
        Collections.reverse(wires);
        return Collections.unmodifiableList(wires);
    }

    private static List<WireId> wires(List<Branch> way, Predicate<Branch> end) {
        List<WireId> wires = new ArrayList<>();
        for (Branch branch : way) {
            if (end.test(branch)) {
                break;
            }
            if (branch.kind() == BranchKind.WIRE) {
                wires.add(new WireId(branch.id().value()));
            }
        }
        return wires;
    }

    private Set<PointId> reached(Collection<PointId> starts, Along along, Predicate<Branch> passes) {
        Set<PointId> reached = new HashSet<>(starts);
        Deque<PointId> open = new ArrayDeque<>(starts);
        while (!open.isEmpty()) {
            PointId point = open.remove();
            for (Branch branch : passages.at(point)) {
                PointId next = Adjacency.across(branch, point);
                if (along.leaves(point, branch) && passes.test(branch) && reached.add(next)) {
                    open.add(next);
                }
            }
        }
        return reached;
    }

    /** The way with the fewest branches from a point to the first of the ends; empty when there is none. */
    private List<Branch> way(PointId start, Set<PointId> ends, Along along) {
        Map<PointId, Optional<Branch>> over = new HashMap<>(Map.of(start, Optional.empty()));
        Deque<PointId> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            PointId point = open.remove();
            if (ends.contains(point)) {
                return backTo(start, point, over);
            }
            for (Branch branch : passages.at(point)) {
                if (along.leaves(point, branch)
                        && over.putIfAbsent(Adjacency.across(branch, point), Optional.of(branch)) == null) {
                    open.add(Adjacency.across(branch, point));
                }
            }
        }
        return List.of();
    }

    private static List<Branch> backTo(PointId start, PointId end, Map<PointId, Optional<Branch>> over) {
        List<Branch> way = new ArrayList<>();
        PointId point = end;
        while (!point.equals(start)) {
            Branch branch = over.get(point).orElseThrow();
            way.add(branch);
            point = Adjacency.across(branch, point);
        }
        Collections.reverse(way);
        return way;
    }
}
