package org.ohmloom.graph;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.that;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.ohmloom.model.SegmentId;

/**
 * The way of a wire over the physical harness.
 *
 * @param segments      bundle segments in order from the wire's {@code from} end
 * @param lengthMetres  length along them, m; a splice along a segment counts only the stretch up to it
 * @param stretchMetres length along each of the segments, m, in the same order
 */
public record Route(List<SegmentId> segments, double lengthMetres, List<Double> stretchMetres) {

    public Route {
        segments = List.copyOf(segments);
        stretchMetres = List.copyOf(stretchMetres);
        notNegative(lengthMetres, "length of a route");
        that(
                segments.size() == stretchMetres.size(),
                "a route of %s segments has %s stretches",
                segments.size(),
                stretchMetres.size());
    }

    /** A way along segments of one length. */
    public Route(List<SegmentId> segments, double lengthMetres) {
        this(
                segments,
                lengthMetres,
                Collections.nCopies(segments.size(), segments.isEmpty() ? 0 : lengthMetres / segments.size()));
    }

    /** The segments without order. */
    public Set<SegmentId> segmentSet() {
        return Set.copyOf(segments);
    }

    /** The segments in words, as in "SEG1, SEG2". */
    public String words() {
        return segments.isEmpty()
                ? "both ends at one place"
                : String.join(", ", segments.stream().map(SegmentId::value).toList());
    }
}
