package org.ohmloom.signal.bus.wiring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.WireEnd;

/**
 * The trunk of a bus and what hangs on it, along its high line.
 *
 * @param first     one end of the trunk
 * @param last      the other end
 * @param trunk     the way between them
 * @param along     place of every point of the trunk, m from its first end
 * @param stubs     way of each joined node from the trunk, the nearest part first
 * @param terminated whether both ends are terminations
 */
record BusPlan(
        PointId first,
        PointId last,
        List<Branch> trunk,
        Map<PointId, Double> along,
        Map<DataBus.Node, List<Branch>> stubs,
        boolean terminated) {

    /**
     * The plan of a line; empty where fewer than two points are joined.
     *
     * @param high         the high line
     * @param nodes        points of the nodes' high pins
     * @param terminations points of the terminations on the high line
     */
    static Optional<BusPlan> of(LineTree high, Map<DataBus.Node, PointId> nodes, List<PointId> terminations) {
        List<PointId> ends = terminations.stream().filter(high::has).distinct().toList();
        boolean terminated = ends.size() >= 2;
        List<PointId> candidates = terminated
                ? ends
                : nodes.values().stream().filter(high::has).distinct().toList();
        List<PointId> farthest = farthest(high, candidates);
        if (farthest.isEmpty()) {
            return Optional.empty();
        }
        PointId first = farthest.get(0);
        PointId last = farthest.get(1);
        List<Branch> trunk = high.way(first, last);
        List<PointId> points = LineTree.points(first, trunk);
        Map<PointId, Double> along = new HashMap<>(Map.of(first, 0.0));
        double metres = 0;
        for (int k = 0; k < trunk.size(); k++) {
            metres += high.metres(trunk.get(k));
            along.put(points.get(k + 1), metres);
        }
        Map<DataBus.Node, List<Branch>> stubs = new HashMap<>();
        Set<Branch> onTrunk = new HashSet<>(trunk);
        nodes.forEach((node, point) -> {
            if (high.has(point)) {
                stubs.put(
                        node,
                        high.way(first, point).stream()
                                .filter(branch -> !onTrunk.contains(branch))
                                .toList());
            }
        });
        return Optional.of(new BusPlan(first, last, trunk, along, stubs, terminated));
    }

    /** The two of some points of a line that are furthest apart along it; none where there are fewer. */
    static List<PointId> farthest(LineTree high, List<PointId> points) {
        List<PointId> farthest = List.of();
        double longest = -1;
        for (int i = 0; i < points.size(); i++) {
            for (int j = i + 1; j < points.size(); j++) {
                double metres = high.metres(high.way(points.get(i), points.get(j)));
                if (metres > longest) {
                    longest = metres;
                    farthest = List.of(points.get(i), points.get(j));
                }
            }
        }
        return farthest;
    }

    /** The point where a node's stub leaves the trunk. */
    PointId leaves(LineTree high, PointId node) {
        PointId at = first;
        for (PointId point : LineTree.points(first, high.way(first, node))) {
            at = along.containsKey(point) ? point : at;
        }
        return at;
    }

    /** Branches that lead to nodes off the trunk, each once. */
    Set<Branch> branchesOffTrunk() {
        Set<Branch> all = new HashSet<>();
        stubs.values().forEach(all::addAll);
        return all;
    }

    /** Nodes whose stub hangs on that of another node: they share a part of it and both go on from there. */
    List<DataBus.Node> onStubs(LineTree high) {
        List<DataBus.Node> nodes = new ArrayList<>();
        stubs.forEach((node, way) -> {
            for (Map.Entry<DataBus.Node, List<Branch>> other : stubs.entrySet()) {
                double shared = way.stream()
                        .filter(other.getValue()::contains)
                        .mapToDouble(high::metres)
                        .sum();
                boolean later = high.metres(way) > high.metres(other.getValue())
                        || high.metres(way) == high.metres(other.getValue())
                                && node.unit().compareTo(other.getKey().unit()) > 0;
                if (!other.getKey().equals(node) && shared > 0 && later && !nodes.contains(node)) {
                    nodes.add(node);
                }
            }
        });
        return nodes;
    }

    /** The point of a place where a termination joins a line. */
    static Optional<PointId> point(Network network, WireEnd end) {
        if (end instanceof WireEnd.AtTerminal at) {
            return network.index().terminal(at.component(), at.terminal());
        }
        if (end instanceof WireEnd.AtCavity at) {
            return network.index().cavity(at.connector(), at.cavity());
        }
        return end instanceof WireEnd.AtSplice at ? network.index().splice(at.splice()) : Optional.empty();
    }
}
