package org.ohmloom.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jgrapht.alg.util.UnionFind;

/**
 * The parts of a network within which current gets from any point to any other, and the diodes and sources between them: a way
 * through the network is then a way over a few parts, not over every wire. Each part is named by one of its points.
 */
final class ConductingParts {

    private final UnionFind<PointId> parts;
    private final Map<PointId, List<Way>> leaving = new HashMap<>();
    private final Map<PointId, List<Way>> arriving = new HashMap<>();

    /** A branch between parts, and the part at its far end. */
    private record Way(Branch branch, PointId part) {}

    /**
     * Joins what conducts.
     *
     * @param points   all points
     * @param branches the branches that count
     * @param between  those of them that join no parts: a diode conducts from its first to its second end, anything else both ways
     */
    ConductingParts(Set<PointId> points, Collection<Branch> branches, Predicate<Branch> between) {
        parts = new UnionFind<>(points);
        branches.stream().filter(between.negate()).forEach(branch -> parts.union(branch.from(), branch.to()));
        branches.stream().filter(between).forEach(branch -> {
            join(branch, branch.from(), branch.to());
            if (!(branch.law() instanceof Law.Threshold)) {
                join(branch, branch.to(), branch.from());
            }
        });
    }

    private void join(Branch branch, PointId from, PointId to) {
        leaving.computeIfAbsent(of(from), part -> new ArrayList<>()).add(new Way(branch, of(to)));
        arriving.computeIfAbsent(of(to), part -> new ArrayList<>()).add(new Way(branch, of(from)));
    }

    /** The part of a point. */
    PointId of(PointId point) {
        return parts.find(point);
    }

    /** The parts that current gets to from a point through branches between parts that are allowed. */
    Set<PointId> from(PointId point, Predicate<Branch> allowed) {
        return reached(point, leaving, allowed);
    }

    /** The parts from which current gets to a point. */
    Set<PointId> to(PointId point, Predicate<Branch> allowed) {
        return reached(point, arriving, allowed);
    }

    private Set<PointId> reached(PointId point, Map<PointId, List<Way>> ways, Predicate<Branch> allowed) {
        Set<PointId> seen = new HashSet<>(Set.of(of(point)));
        Deque<PointId> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            for (Way way : ways.getOrDefault(open.remove(), List.of())) {
                if (allowed.test(way.branch()) && seen.add(way.part())) {
                    open.add(way.part());
                }
            }
        }
        return seen;
    }
}
