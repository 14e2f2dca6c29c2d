package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** The branches that meet at each point of a network, in order of their identities. */
public final class Adjacency {
    private final Map<PointId, List<Branch>> byPoint = new HashMap<>();

    private Adjacency() {}

    /** All branches of a network. */
    public static Adjacency of(Network network) {
        return of(network, branch -> true);
    }

    /** The branches of a network that a caller chooses. */
    public static Adjacency of(Network network, Predicate<Branch> chosen) {
        Adjacency adjacency = new Adjacency();
        for (Branch branch : network.branches().values()) {
            if (chosen.test(branch)) {
                adjacency
                        .byPoint
                        .computeIfAbsent(branch.from(), point -> new ArrayList<>())
                        .add(branch);
                adjacency
                        .byPoint
                        .computeIfAbsent(branch.to(), point -> new ArrayList<>())
                        .add(branch);
            }
        }
        return adjacency;
    }

    /** The chosen branches at a point. */
    public List<Branch> at(PointId point) {
        return Collections.unmodifiableList(byPoint.getOrDefault(point, List.of()));
    }

    /** The other end of a branch seen from one of its ends. */
    public static PointId across(Branch branch, PointId point) {
        return branch.from().equals(point) ? branch.to() : branch.from();
    }
}
