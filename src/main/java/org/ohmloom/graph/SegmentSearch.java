package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;

/**
 * Dijkstra's search over the bundle segments from several starts at once, each with the stretch that lies before it, keeping
 * off some segments; of equally long ways the one of the segments that come first by identity.
 */
final class SegmentSearch {
    private final Map<BreakoutId, List<BundleSegment>> at = new HashMap<>();

    SegmentSearch(Harness harness) {
        harness.breakouts().ids().forEach(id -> at.put(id, new ArrayList<>()));
        for (BundleSegment segment : harness.segments().all()) {
            at.get(segment.from()).add(segment);
            at.get(segment.to()).add(segment);
        }
    }

    /** How a breakout is reached: over the last segment, from the breakout before; nothing before a start. */
    record Reached(double metres, Optional<SegmentId> last, double lastMetres, Optional<BreakoutId> before) {}

    private record Open(BreakoutId breakout, double metres) implements Comparable<Open> {
        @Override
        public int compareTo(Open other) {
            int byLength = Double.compare(metres, other.metres);
            return byLength != 0 ? byLength : breakout.compareTo(other.breakout);
        }
    }

    /**
     * Every breakout that is reached, and how.
     *
     * @param starts  where the search begins, with what lies before, m
     * @param blocked segments to keep off
     */
    Map<BreakoutId, Reached> from(Map<BreakoutId, Double> starts, Set<SegmentId> blocked) {
        Map<BreakoutId, Reached> best = new LinkedHashMap<>();
        PriorityQueue<Open> open = new PriorityQueue<>();
        starts.forEach((start, metres) -> {
            best.put(start, new Reached(metres, Optional.empty(), 0, Optional.empty()));
            open.add(new Open(start, metres));
        });
        Set<BreakoutId> done = new HashSet<>();
        while (!open.isEmpty()) {
            Open here = open.remove();
            if (!done.add(here.breakout())) {
                continue;
            }
            for (BundleSegment segment : at.get(here.breakout())) {
                if (blocked.contains(segment.id())) {
                    continue;
                }
                BreakoutId next = segment.from().equals(here.breakout()) ? segment.to() : segment.from();
                double metres = here.metres() + segment.lengthMetres();
                if (!best.containsKey(next) || metres < best.get(next).metres()) {
                    best.put(
                            next,
                            new Reached(
                                    metres,
                                    Optional.of(segment.id()),
                                    segment.lengthMetres(),
                                    Optional.of(here.breakout())));
                    open.add(new Open(next, metres));
                }
            }
        }
        return best;
    }
}
