package org.ohmloom.graph;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;

/**
 * The electrical multigraph of the whole harness in one operating state: feeds, returns and chassis together. Parallel
 * branches are allowed; a branch from a point to itself is not.
 *
 * @param state    the operating state
 * @param points   every electrical point, also those nothing conducts to
 * @param branches every conducting element by identity
 * @param datum    the point all voltages are relative to: the first source's negative terminal; empty without a source
 */
public record Network(
        StateId state, SortedSet<PointId> points, SortedMap<BranchId, Branch> branches, Optional<PointId> datum) {

    public Network {
        points = Collections.unmodifiableSortedSet(new TreeSet<>(points));
        branches = Collections.unmodifiableSortedMap(new TreeMap<>(branches));
    }

    /** The branches in order. */
    public List<Branch> all() {
        return List.copyOf(branches.values());
    }

    /** The branches that belong to a component. */
    public List<Branch> of(ComponentId component) {
        return branches.values().stream()
                .filter(branch -> branch.element().filter(component::equals).isPresent())
                .toList();
    }
}
