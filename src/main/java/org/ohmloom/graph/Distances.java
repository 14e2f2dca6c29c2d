package org.ohmloom.graph;

import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.ohmloom.graph.Anchors.Anchor;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.WireEnd;

/**
 * How far every place of the physical harness is from one end of a wire along the segments, by the shortest way.
 *
 * @param toBreakouts distance of each breakout that is reached, m
 * @param along       where the end itself lies along a segment, m from that segment's from end; empty at a breakout
 */
public record Distances(Map<BreakoutId, Double> toBreakouts, Map<SegmentId, Double> along) {

    public Distances {
        toBreakouts = Collections.unmodifiableMap(new HashMap<>(toBreakouts));
        along = Collections.unmodifiableMap(new HashMap<>(along));
    }

    /** The distances from an end; none are known where it has no place. */
    public static Distances from(Harness harness, WireEnd end) {
        Map<BreakoutId, Double> starts = new HashMap<>();
        Map<SegmentId, Double> along = new HashMap<>();
        for (Anchor anchor : new Anchors(harness).of(end)) {
            starts.merge(anchor.breakout(), anchor.stretchMetres(), Math::min);
            anchor.segment().ifPresent(segment -> along.put(segment, anchor.positionMetres()));
        }
        Map<BreakoutId, Double> best = new HashMap<>();
        new SegmentSearch(harness)
                .from(starts, Set.of())
                .forEach((breakout, reached) -> best.put(breakout, reached.metres()));
        return new Distances(best, along);
    }

    /** Distance of a place along a segment, m; empty where no way leads there. */
    public OptionalDouble to(BundleSegment segment, double metres) {
        double shortest = Math.min(
                toBreakouts.getOrDefault(segment.from(), Double.POSITIVE_INFINITY) + metres,
                toBreakouts.getOrDefault(segment.to(), Double.POSITIVE_INFINITY) + segment.lengthMetres() - metres);
        Double own = along.get(segment.id());
        if (own != null) {
            shortest = Math.min(shortest, Math.abs(metres - own));
        }
        return Double.isFinite(shortest) ? OptionalDouble.of(shortest) : OptionalDouble.empty();
    }
}
