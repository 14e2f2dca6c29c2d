package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.graph.Anchors.Anchor;
import org.ohmloom.graph.SegmentSearch.Reached;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;

/**
 * Finds the shortest way that keeps off some segments and passes some breakouts, in whichever order is shortest: a
 * search from stop to stop.
 */
final class PermittedWays {

    /** More stops than this are passed in the order they are named: all orders would be too many to try. */
    private static final int MOST_ORDERED = 6;

    private final SegmentSearch segments;
    private final Map<Search, Map<BreakoutId, Reached>> known = new HashMap<>();

    PermittedWays(Harness harness) {
        this.segments = new SegmentSearch(harness);
    }

    private record Search(BreakoutId start, Set<SegmentId> blocked) {}

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
        List<SegmentId> laid = new ArrayList<>();
        List<Double> stretches = new ArrayList<>();
        double metres = start.stretchMetres() + end.stretchMetres();
        start.segment().ifPresent(segment -> {
            laid.add(segment);
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
            laid.addAll(leg);
            stretches.addAll(lengths);
            here = goal;
        }
        end.segment().ifPresent(segment -> {
            laid.add(segment);
            stretches.add(end.stretchMetres());
        });
        return Optional.of(new Route(laid, metres, stretches));
    }

    private Map<BreakoutId, Reached> search(BreakoutId start, Set<SegmentId> blocked) {
        return known.computeIfAbsent(new Search(start, blocked), search -> segments.from(Map.of(start, 0.0), blocked));
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
