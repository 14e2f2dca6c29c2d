package org.ohmloom.graph;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jgrapht.alg.util.UnionFind;

/**
 * The parts of a network within which current gets from any point to any other, and the diodes and sources between them: who asks
 * for many ways asks it once for each such branch, not for each wire. Each part is named by one of its points.
 */
final class ConductingParts {

    private final UnionFind<PointId> parts;
    private final Map<PointId, Set<Branch>> leaving = new HashMap<>();
    private final Map<PointId, Set<Branch>> arriving = new HashMap<>();

    /**
     * Joins what conducts.
     *
     * @param points   all points
     * @param branches the branches that count
     * @param oneWay   those of them that join no parts: a diode conducts from its first to its second end, anything else both ways
     */
    ConductingParts(Set<PointId> points, Collection<Branch> branches, Predicate<Branch> oneWay) {
        parts = new UnionFind<>(points);
        List<Branch> between = branches.stream().filter(oneWay).toList();
        branches.stream().filter(oneWay.negate()).forEach(branch -> parts.union(branch.from(), branch.to()));
        for (Branch branch : between) {
            put(branch.from(), branch, leaving);
            put(branch.to(), branch, arriving);
            if (!(branch.law() instanceof Law.Threshold)) {
                put(branch.to(), branch, leaving);
                put(branch.from(), branch, arriving);
            }
        }
    }

    private void put(PointId point, Branch branch, Map<PointId, Set<Branch>> map) {
        map.computeIfAbsent(parts.find(point), part -> new HashSet<>()).add(branch);
    }

    /** The part of a point. */
    PointId of(PointId point) {
        return parts.find(point);
    }

    /** The parts that current gets to from a point through branches between parts that are allowed. */
    Set<PointId> from(PointId point, Predicate<Branch> allowed) {
        return reached(point, leaving, Branch::from, Branch::to, allowed);
    }

    /** The parts from which current gets to a point. */
    Set<PointId> to(PointId point, Predicate<Branch> allowed) {
        return reached(point, arriving, Branch::to, Branch::from, allowed);
    }

    private Set<PointId> reached(
            PointId point,
            Map<PointId, Set<Branch>> ways,
            Function<Branch, PointId> near,
            Function<Branch, PointId> far,
            Predicate<Branch> allowed) {
        Set<PointId> seen = new HashSet<>(Set.of(of(point)));
        Deque<PointId> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            PointId part = open.remove();
            for (Branch branch : ways.getOrDefault(part, Set.of())) {
                PointId next = of(near.apply(branch)).equals(part) ? of(far.apply(branch)) : of(near.apply(branch));
                if (allowed.test(branch) && seen.add(next)) {
                    open.add(next);
                }
            }
        }
        return seen;
    }
}
