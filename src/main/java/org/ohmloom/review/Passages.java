package org.ohmloom.review;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;

/** Ways through a network over wires, contacts, joints, chassis and devices, the latter taken as closed. */
final class Passages {

    private final Map<PointId, List<Branch>> at = new HashMap<>();

    Passages(Network network) {
        for (Branch branch : network.all()) {
            if (branch.kind().isPassage()) {
                at.computeIfAbsent(branch.from(), key -> new ArrayList<>()).add(branch);
                at.computeIfAbsent(branch.to(), key -> new ArrayList<>()).add(branch);
            }
        }
    }

    /** Every point a way leads to, the start among them. */
    Set<PointId> reached(PointId start) {
        Map<PointId, Branch> arrivals = new HashMap<>();
        search(start, Set.of(), arrivals);
        Set<PointId> points = new HashSet<>(arrivals.keySet());
        points.add(start);
        return points;
    }

    /** The way with the fewest branches from a point to the nearest of some points, in order; empty when there is none. */
    List<Branch> shortest(PointId start, Set<PointId> targets) {
        Map<PointId, Branch> arrivals = new HashMap<>();
        Deque<Branch> way = new ArrayDeque<>();
        PointId point = search(start, targets, arrivals).orElse(start);
        while (!point.equals(start)) {
            Branch branch = arrivals.get(point);
            way.addFirst(branch);
            point = across(branch, point);
        }
        return List.copyOf(way);
    }

    private Optional<PointId> search(PointId start, Set<PointId> targets, Map<PointId, Branch> arrivals) {
        Deque<PointId> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            PointId point = open.remove();
            if (targets.contains(point)) {
                return Optional.of(point);
            }
            for (Branch branch : at.getOrDefault(point, List.of())) {
                PointId next = across(branch, point);
                if (!next.equals(start) && arrivals.putIfAbsent(next, branch) == null) {
                    open.add(next);
                }
            }
        }
        return Optional.empty();
    }

    /** The other end of a branch. */
    static PointId across(Branch branch, PointId point) {
        return branch.from().equals(point) ? branch.to() : branch.from();
    }
}
