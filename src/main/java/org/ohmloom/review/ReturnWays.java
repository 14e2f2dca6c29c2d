package org.ohmloom.review;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.ComponentId;

/**
 * Which components have a way back to the negative terminal of a source, over wires, contacts, chassis and devices, the
 * latter taken as closed.
 * <p>A relay coil and a sensor's signal resistance work either way round, so one end of two is enough there.
 *
 * @param stranded components without a way back; none when there is no source at all
 */
record ReturnWays(SortedSet<ComponentId> stranded) {

    ReturnWays {
        stranded = Collections.unmodifiableSortedSet(stranded);
    }

    /** Finds the ways of a network. O(points + branches). */
    static ReturnWays of(Network network) {
        SortedSet<ComponentId> stranded = new TreeSet<>();
        Set<PointId> home = reachableFromNegatives(network);
        if (!home.isEmpty()) {
            for (Branch branch : network.branches().values()) {
                boolean back = home.contains(branch.to()) || (isEitherWay(branch) && home.contains(branch.from()));
                if (needsReturn(branch.kind()) && !back) {
                    branch.element()
                            .filter(ComponentId.class::isInstance)
                            .map(ComponentId.class::cast)
                            .ifPresent(stranded::add);
                }
            }
        }
        return new ReturnWays(stranded);
    }

    /** Whether a component has no way back. */
    boolean isStranded(ComponentId component) {
        return stranded.contains(component);
    }

    private static boolean needsReturn(BranchKind kind) {
        return kind.part() == BranchKind.Part.LOAD && kind != BranchKind.PRESENT_LOAD;
    }

    private static boolean isEitherWay(Branch branch) {
        return branch.kind() == BranchKind.RELAY_COIL || branch.kind() == BranchKind.SENSOR;
    }

    private static Set<PointId> reachableFromNegatives(Network network) {
        Map<PointId, List<PointId>> neighbours = new HashMap<>();
        Deque<PointId> open = new ArrayDeque<>();
        Set<PointId> reached = new HashSet<>();
        for (Branch branch : network.branches().values()) {
            if (branch.kind().part() == BranchKind.Part.SOURCE && reached.add(branch.from())) {
                open.add(branch.from());
            }
            if (branch.kind().isPassage()) {
                neighbours
                        .computeIfAbsent(branch.from(), key -> new ArrayList<>())
                        .add(branch.to());
                neighbours
                        .computeIfAbsent(branch.to(), key -> new ArrayList<>())
                        .add(branch.from());
            }
        }
        while (!open.isEmpty()) {
            for (PointId next : neighbours.getOrDefault(open.remove(), List.of())) {
                if (reached.add(next)) {
                    open.add(next);
                }
            }
        }
        return reached;
    }
}
