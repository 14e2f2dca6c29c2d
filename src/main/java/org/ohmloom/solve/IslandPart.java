package org.ohmloom.solve;

import java.util.List;
import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.PointId;

/**
 * The points and branches of one island before it is solved.
 *
 * @param id       the first of its points
 * @param points   its points in order
 * @param branches its branches that can conduct, in order, with their law of the moment
 * @param datum    the point its voltages are relative to; empty without a source
 * @param isMain   whether that is the datum of the whole network
 * @param source   its first source that is on
 */
record IslandPart(
        String id,
        List<PointId> points,
        List<Branch> branches,
        Optional<PointId> datum,
        boolean isMain,
        Optional<Branch> source) {

    IslandPart {
        points = List.copyOf(points);
        branches = List.copyOf(branches);
    }

    /** Whether a source in it is on. */
    boolean powered() {
        return source.isPresent();
    }
}
