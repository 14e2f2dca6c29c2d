package org.ohmloom.graph;

import java.util.List;

/**
 * One independent cycle of the return network.
 *
 * @param members branches in order around the cycle
 * @param points  points in order; point k joins member k-1 and member k
 */
public record ReturnLoop(List<BranchId> members, List<PointId> points) {

    public ReturnLoop {
        members = List.copyOf(members);
        points = List.copyOf(points);
    }
}
