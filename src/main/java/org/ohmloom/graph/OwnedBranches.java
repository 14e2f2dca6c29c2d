package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.ohmloom.model.ElementId;

/**
 * The branches of a network by the element they belong to, put in order when first asked for: rules ask for every load in every
 * state, and looking through all branches each time would take the square of their number. Two are equal whatever they hold, since
 * it follows from the branches of the network. Safe on any thread.
 */
public final class OwnedBranches {

    static final OwnedBranches NONE = new OwnedBranches(new TreeMap<>());

    private final SortedMap<BranchId, Branch> branches;
    private volatile @Nullable Map<ElementId, List<Branch>> byElement;

    OwnedBranches(SortedMap<BranchId, Branch> branches) {
        this.branches = branches;
    }

    /** The branches of an element, in the order of the network. */
    List<Branch> of(ElementId element) {
        Map<ElementId, List<Branch>> known = byElement;
        if (known == null) {
            known = byElement();
            byElement = known;
        }
        return known.getOrDefault(element, List.of());
    }

    private Map<ElementId, List<Branch>> byElement() {
        Map<ElementId, List<Branch>> found = new HashMap<>();
        branches.values().forEach(branch -> branch.element()
                .ifPresent(element ->
                        found.computeIfAbsent(element, any -> new ArrayList<>()).add(branch)));
        found.replaceAll((element, own) -> List.copyOf(own));
        return found;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof OwnedBranches;
    }

    @Override
    public int hashCode() {
        return OwnedBranches.class.hashCode();
    }
}
