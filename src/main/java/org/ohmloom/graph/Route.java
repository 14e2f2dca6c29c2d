package org.ohmloom.graph;

import static org.ohmloom.units.Require.notNegative;

import java.util.List;
import java.util.Set;
import org.ohmloom.model.SegmentId;

/**
 * The way of a wire over the physical harness.
 *
 * @param segments     bundle segments in order from the wire's {@code from} end
 * @param lengthMetres length along them, m; a splice along a segment counts only the stretch up to it
 */
public record Route(List<SegmentId> segments, double lengthMetres) {

    public Route {
        segments = List.copyOf(segments);
        notNegative(lengthMetres, "length of a route");
    }

    /** The segments without order. */
    public Set<SegmentId> segmentSet() {
        return Set.copyOf(segments);
    }
}
