package org.ohmloom.signal.bus.wiring;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.ohmloom.graph.Adjacency;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.WireId;

/**
 * One line of a data bus: the wires, contacts and splices that hang together with a point, as the tree of shortest ways from it.
 *
 * <p>Dijkstra by length, contacts and joints counting nothing; then by count of branches. O(branches log branches).
 */
final class LineTree {

    /** One way in the tree: over a branch from a point nearer to the root. */
    private record Arrival(Branch branch, PointId from, double metres, int steps) {}

    private record Open(PointId point, double metres, int steps) {}

    private final PointId root;
    private final Map<PointId, Arrival> arrivals = new HashMap<>();
    private final Set<Branch> branches = new LinkedHashSet<>();
    private final Map<WireId, Double> lengths;

    private LineTree(PointId root, Map<WireId, Double> lengths) {
        this.root = root;
        this.lengths = lengths;
    }

    /** The line that hangs together with a point. */
    static LineTree from(PointId root, Network network, Map<WireId, Double> lengths) {
        LineTree tree = new LineTree(root, lengths);
        tree.grow(Adjacency.of(network, LineTree::isLine));
        return tree;
    }

    private static boolean isLine(Branch branch) {
        boolean kind = branch.kind() == BranchKind.WIRE
                || branch.kind() == BranchKind.CONTACT
                || branch.kind() == BranchKind.JOINT;
        return kind && branch.element().filter(GroundPointId.class::isInstance).isEmpty();
    }

    private void grow(Adjacency adjacency) {
        PriorityQueue<Open> queue = new PriorityQueue<>(Comparator.comparingDouble(Open::metres)
                .thenComparingInt(Open::steps)
                .thenComparing(Open::point));
        queue.add(new Open(root, 0, 0));
        Set<PointId> done = new HashSet<>();
        while (!queue.isEmpty()) {
            Open here = queue.remove();
            if (!done.add(here.point())) {
                continue;
            }
            for (Branch branch : adjacency.at(here.point())) {
                branches.add(branch);
                PointId next = branch.from().equals(here.point()) ? branch.to() : branch.from();
                double metres = here.metres() + metres(branch);
                Arrival known = arrivals.get(next);
                boolean better = known == null
                        || metres < known.metres()
                        || metres == known.metres() && here.steps() + 1 < known.steps();
                if (!done.contains(next) && better) {
                    arrivals.put(next, new Arrival(branch, here.point(), metres, here.steps() + 1));
                    queue.add(new Open(next, metres, here.steps() + 1));
                }
            }
        }
    }

    /** Length of a branch, m: that of a wire, 0 for contacts, joints and wires of unknown length. */
    double metres(Branch branch) {
        return branch.element()
                .filter(WireId.class::isInstance)
                .map(lengths::get)
                .orElse(0.0);
    }

    /** Whether a point is on the line. */
    boolean has(PointId point) {
        return point.equals(root) || arrivals.containsKey(point);
    }

    /** Branches that close a loop. */
    List<Branch> closing() {
        Set<Branch> tree = new HashSet<>();
        arrivals.values().forEach(arrival -> tree.add(arrival.branch()));
        return branches.stream().filter(branch -> !tree.contains(branch)).toList();
    }

    /** All branches of the line. */
    Set<Branch> branches() {
        return Collections.unmodifiableSet(branches);
    }

    /** The wires of the line. */
    List<WireId> wires() {
        return wires(branches).stream().sorted().toList();
    }

    /** The wires of a way, in its order. */
    static List<WireId> wires(Collection<Branch> way) {
        return way.stream()
                .flatMap(branch -> branch.element().stream())
                .filter(WireId.class::isInstance)
                .map(WireId.class::cast)
                .distinct()
                .toList();
    }

    /** The way from one point of the line to another over the tree, in order. */
    List<Branch> way(PointId from, PointId to) {
        List<Branch> up = new ArrayList<>(toRoot(from));
        List<Branch> down = new ArrayList<>(toRoot(to));
        while (!up.isEmpty() && !down.isEmpty() && up.get(up.size() - 1).equals(down.get(down.size() - 1))) {
            up.remove(up.size() - 1);
            down.remove(down.size() - 1);
        }
        Collections.reverse(down);
        up.addAll(down);
        return up;
    }

    /** Points of a way in order, its first one among them. */
    static List<PointId> points(PointId from, List<Branch> way) {
        List<PointId> points = new ArrayList<>(List.of(from));
        PointId here = from;
        for (Branch branch : way) {
            here = branch.from().equals(here) ? branch.to() : branch.from();
            points.add(here);
        }
        return points;
    }

    /** Length of a way, m. */
    double metres(List<Branch> way) {
        return way.stream().mapToDouble(this::metres).sum();
    }

    /** Resistance of a way, ohm. */
    static double ohms(List<Branch> way) {
        return way.stream().mapToDouble(branch -> ohms(branch).orElse(0.0)).sum();
    }

    /** Resistance of a branch, ohm. */
    static Optional<Double> ohms(Branch branch) {
        return branch.law() instanceof Law.Resistance resistance ? Optional.of(resistance.ohms()) : Optional.empty();
    }

    private List<Branch> toRoot(PointId point) {
        List<Branch> way = new ArrayList<>();
        PointId here = point;
        while (!here.equals(root)) {
            Arrival arrival = arrivals.get(here);
            way.add(arrival.branch());
            here = arrival.from();
        }
        return way;
    }
}
