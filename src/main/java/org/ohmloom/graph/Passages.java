package org.ohmloom.graph;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Ways through a network over wires, contacts, joints, chassis and devices, the latter taken as closed. */
public final class Passages {

    private final Adjacency passages;

    /** Ways through a network; the laws of its branches play no part. */
    public Passages(Network network) {
        passages = Adjacency.of(network, branch -> branch.kind().isPassage());
    }

    /** Every point a way leads to from one of some points, those among them. */
    public Set<PointId> reached(Collection<PointId> starts) {
        Map<PointId, Branch> arrivals = new HashMap<>();
        search(starts, Set.of(), arrivals);
        Set<PointId> points = new HashSet<>(arrivals.keySet());
        points.addAll(starts);
        return points;
    }

    /** The way with the fewest branches from a point to the nearest of some points, in order; empty when there is none. */
    public List<Branch> shortest(PointId start, Set<PointId> targets) {
        Map<PointId, Branch> arrivals = new HashMap<>();
        Deque<Branch> way = new ArrayDeque<>();
        PointId point = search(Set.of(start), targets, arrivals).orElse(start);
        while (!point.equals(start)) {
            Branch branch = arrivals.get(point);
            way.addFirst(branch);
            point = Adjacency.across(branch, point);
        }
        return List.copyOf(way);
    }

    private Optional<PointId> search(Collection<PointId> starts, Set<PointId> targets, Map<PointId, Branch> arrivals) {
        Deque<PointId> open = new ArrayDeque<>(starts);
        while (!open.isEmpty()) {
            PointId point = open.remove();
            if (targets.contains(point)) {
                return Optional.of(point);
            }
            for (Branch branch : passages.at(point)) {
                PointId next = Adjacency.across(branch, point);
                if (!starts.contains(next) && arrivals.putIfAbsent(next, branch) == null) {
                    open.add(next);
                }
            }
        }
        return Optional.empty();
    }
}
