package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.ohmloom.graph.Anchors.Anchor;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;

/**
 * Finds the shortest way that keeps off some segments and passes some breakouts, in whichever order is shortest. Dijkstra's
 * search from stop to stop; of equally long ways the one of the segments that come first by identity.
 */
final class PermittedWays {

    /** More stops than this are passed in the order they are named: all orders would be too many to try. */
    private static final int MOST_ORDERED = 6;

    private final Map<BreakoutId, List<BundleSegment>> at = new HashMap<>();
    private final Map<Search, Map<BreakoutId, Reached>> known = new HashMap<>();

    PermittedWays(Harness harness) {
        harness.breakouts().ids().forEach(id -> at.put(id, new ArrayList<>()));
        for (BundleSegment segment : harness.segments().all()) {
            at.get(segment.from()).add(segment);
            at.get(segment.to()).add(segment);
        }
    }

    private record Search(BreakoutId start, Set<SegmentId> blocked) {}

    /** How a breakout is reached: over the last segment, from the breakout before; nothing before the start. */
    private record Reached(double metres, Optional<SegmentId> last, double lastMetres, Optional<BreakoutId> before) {}

    private record Open(BreakoutId breakout, double metres) implements Comparable<Open> {
        @Override
        public int compareTo(Open other) {
            int byLength = Double.compare(metres, other.metres);
            return byLength != 0 ? byLength : breakout.compareTo(other.breakout);
        }
    }

    /**
     * The shortest permitted way.
     *
     * @param from    where one end reaches the breakouts
     * @param to      where the other does
     * @param blocked segments to keep off
     * @param through breakouts to pass
     */
    Optional<Route> shortest(List<Anchor> from, List<Anchor> to, Set<SegmentId> blocked, Set<BreakoutId> through) {
        Optional<Route> best = Optional.empty();
        if (through.isEmpty()) {
            best = Router.alongOneSegment(from, to).filter(route -> Collections.disjoint(route.segments(), blocked));
        }
        for (Anchor start : open(from, blocked)) {
            for (Anchor end : open(to, blocked)) {
                for (List<BreakoutId> stops : orders(through)) {
                    Optional<Route> found = way(start, end, stops, blocked);
                    if (found.isPresent()
                            && (best.isEmpty()
                                    || found.get().lengthMetres() < best.get().lengthMetres())) {
                        best = found;
                    }
                }
            }
        }
        return best;
    }

    private static List<Anchor> open(List<Anchor> anchors, Set<SegmentId> blocked) {
        return anchors.stream()
                .filter(anchor -> anchor.segment().filter(blocked::contains).isEmpty())
                .toList();
    }

    private Optional<Route> way(Anchor start, Anchor end, List<BreakoutId> stops, Set<SegmentId> blocked) {
        List<SegmentId> segments = new ArrayList<>();
        List<Double> stretches = new ArrayList<>();
        double metres = start.stretchMetres() + end.stretchMetres();
        start.segment().ifPresent(segment -> {
            segments.add(segment);
            stretches.add(start.stretchMetres());
        });
        List<BreakoutId> goals = new ArrayList<>(stops);
        goals.add(end.breakout());
        BreakoutId here = start.breakout();
        for (BreakoutId goal : goals) {
            Map<BreakoutId, Reached> reached = search(here, blocked);
            if (!reached.containsKey(goal)) {
                return Optional.empty();
            }
            metres += reached.get(goal).metres();
            List<SegmentId> leg = new ArrayList<>();
            List<Double> lengths = new ArrayList<>();
            for (BreakoutId each = goal; !each.equals(here); ) {
                Reached step = reached.get(each);
                leg.add(step.last().orElseThrow());
                lengths.add(step.lastMetres());
                each = step.before().orElseThrow();
            }
            Collections.reverse(leg);
            Collections.reverse(lengths);
            segments.addAll(leg);
            stretches.addAll(lengths);
            here = goal;
        }
        end.segment().ifPresent(segment -> {
            segments.add(segment);
            stretches.add(end.stretchMetres());
        });
        return Optional.of(new Route(segments, metres, stretches));
    }

    private Map<BreakoutId, Reached> search(BreakoutId start, Set<SegmentId> blocked) {
        return known.computeIfAbsent(new Search(start, blocked), search -> dijkstra(start, blocked));
    }

    private Map<BreakoutId, Reached> dijkstra(BreakoutId start, Set<SegmentId> blocked) {
        Map<BreakoutId, Reached> best = new LinkedHashMap<>();
        best.put(start, new Reached(0, Optional.empty(), 0, Optional.empty()));
        PriorityQueue<Open> open = new PriorityQueue<>();
        open.add(new Open(start, 0));
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

    private static List<List<BreakoutId>> orders(Set<BreakoutId> stops) {
        List<List<BreakoutId>> orders = new ArrayList<>();
        List<BreakoutId> all = stops.stream().sorted().toList();
        if (all.size() > MOST_ORDERED) {
            return List.of(List.copyOf(stops));
        }
        permute(new ArrayList<>(), all, orders);
        return orders;
    }

    private static void permute(List<BreakoutId> begun, List<BreakoutId> left, List<List<BreakoutId>> orders) {
        if (left.isEmpty()) {
            orders.add(List.copyOf(begun));
            return;
        }
        for (BreakoutId next : left) {
            begun.add(next);
            permute(begun, left.stream().filter(each -> !each.equals(next)).toList(), orders);
            begun.remove(begun.size() - 1);
        }
    }
}
