package org.ohmloom.review;

import java.util.Collections;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.Passages;
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
        Set<PointId> negatives = network.branches().values().stream()
                .filter(branch -> branch.kind().part() == BranchKind.Part.SOURCE)
                .map(Branch::from)
                .collect(Collectors.toSet());
        return new Passages(network).reached(negatives);
    }
}
