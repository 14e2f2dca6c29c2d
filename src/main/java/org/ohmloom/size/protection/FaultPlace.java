package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.Upstream;

/**
 * Where a fault is reckoned at the far end of a branch: across a load, so that it returns as the load does.
 *
 * @param label what is there, for people
 * @param at    the live point
 * @param to    the point it touches
 */
record FaultPlace(String label, PointId at, PointId to) {

    /** The loads that something feeds; each pair of points once. */
    static List<FaultPlace> of(Network network, Upstream upstream) {
        List<FaultPlace> places = new ArrayList<>();
        Set<List<PointId>> seen = new HashSet<>();
        for (Branch branch : network.branches().values()) {
            if (branch.kind().part() != BranchKind.Part.LOAD || branch.element().isEmpty()) {
                continue;
            }
            boolean turned = branch.kind() == BranchKind.RELAY_COIL
                    && upstream.guards(branch.from()).isEmpty();
            PointId at = turned ? branch.to() : branch.from();
            PointId to = turned ? branch.from() : branch.to();
            if (!upstream.guards(at).isEmpty() && seen.add(List.of(at, to))) {
                places.add(new FaultPlace(branch.element().get().value(), at, to));
            }
        }
        return places;
    }
}
