package org.ohmloom.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * The parts of a network that share no conducting branch.
 *
 * <p>Breadth-first with an explicit queue, so a chain of any length is safe. O(points + branches), and the sorting of
 * the points. A branch that is {@link Law.Open} does not join; a relay contact or a diode may conduct and so does join.
 * A converter's input and output are joined only by conductors, not by the power it carries over.
 *
 * @param all      the points of each island in order; islands in the order of their first points
 * @param numberOf place of each point's island in {@code all}
 */
public record Islands(List<SortedSet<PointId>> all, Map<PointId, Integer> numberOf) {

    public Islands {
        all = List.copyOf(all);
        numberOf = Collections.unmodifiableMap(new HashMap<>(numberOf));
    }

    /** Islands over the branches that can conduct in the network's state. */
    public static Islands of(Network network) {
        return of(network, branch -> !(branch.law() instanceof Law.Open));
    }

    /** Islands over the branches a caller chooses. */
    public static Islands of(Network network, Predicate<Branch> joins) {
        Adjacency adjacency = Adjacency.of(network, joins);
        List<SortedSet<PointId>> all = new ArrayList<>();
        Map<PointId, Integer> numberOf = new HashMap<>();
        Deque<PointId> open = new ArrayDeque<>();
        for (PointId start : network.points()) {
            if (numberOf.putIfAbsent(start, all.size()) != null) {
                continue;
            }
            SortedSet<PointId> island = new TreeSet<>();
            open.add(start);
            while (!open.isEmpty()) {
                PointId point = open.remove();
                island.add(point);
                for (Branch branch : adjacency.at(point)) {
                    PointId next = Adjacency.across(branch, point);
                    if (numberOf.putIfAbsent(next, all.size()) == null) {
                        open.add(next);
                    }
                }
            }
            all.add(Collections.unmodifiableSortedSet(island));
        }
        return new Islands(all, numberOf);
    }

    /** Number of a point's island in {@link #all()}. */
    public OptionalInt number(PointId point) {
        Integer number = numberOf.get(point);
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }

    /** Whether two points share an island. */
    public boolean together(PointId one, PointId other) {
        return number(one).isPresent() && number(one).equals(number(other));
    }
}
