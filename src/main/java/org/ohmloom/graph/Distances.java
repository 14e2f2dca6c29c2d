package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
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
        Map<BreakoutId, List<BundleSegment>> at = new HashMap<>();
        harness.breakouts().ids().forEach(id -> at.put(id, new ArrayList<>()));
        for (BundleSegment segment : harness.segments().all()) {
            at.get(segment.from()).add(segment);
            at.get(segment.to()).add(segment);
        }
        Map<BreakoutId, Double> best = new HashMap<>();
        Map<SegmentId, Double> along = new HashMap<>();
        PriorityQueue<Open> open = new PriorityQueue<>();
        for (Anchor anchor : new Anchors(harness).of(end)) {
            best.merge(anchor.breakout(), anchor.stretchMetres(), Math::min);
            open.add(new Open(anchor.breakout(), anchor.stretchMetres()));
            anchor.segment().ifPresent(segment -> along.put(segment, anchor.positionMetres()));
        }
        Set<BreakoutId> done = new HashSet<>();
        while (!open.isEmpty()) {
            Open here = open.remove();
            if (!done.add(here.breakout())) {
                continue;
            }
            for (BundleSegment segment : at.get(here.breakout())) {
                BreakoutId next = segment.from().equals(here.breakout()) ? segment.to() : segment.from();
                double metres = here.metres() + segment.lengthMetres();
                if (metres < best.getOrDefault(next, Double.POSITIVE_INFINITY)) {
                    best.put(next, metres);
                    open.add(new Open(next, metres));
                }
            }
        }
        return new Distances(best, along);
    }

    private record Open(BreakoutId breakout, double metres) implements Comparable<Open> {
        @Override
        public int compareTo(Open other) {
            int byLength = Double.compare(metres, other.metres);
            return byLength != 0 ? byLength : breakout.compareTo(other.breakout);
        }
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
