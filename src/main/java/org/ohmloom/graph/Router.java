package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.interfaces.ShortestPathAlgorithm.SingleSourcePaths;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.WeightedMultigraph;
import org.ohmloom.graph.Anchors.Anchor;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/**
 * Finds the shortest way of each wire over the bundle segments.
 *
 * <p>Dijkstra's search, run once for each breakout that wires start from; of a wire's two ends the one that more wires
 * share serves as the start, so a control unit with a hundred wires costs one search. Of equally long ways the one found
 * first stays, which depends on the order of identities only.
 */
final class Router {
    private final Graph<BreakoutId, SegmentId> segments = new WeightedMultigraph<>(SegmentId.class);
    private final DijkstraShortestPath<BreakoutId, SegmentId> search;

    private record Ends(Wire wire, List<Anchor> from, List<Anchor> to) {}

    private Router(Harness harness) {
        harness.breakouts().ids().forEach(segments::addVertex);
        for (BundleSegment segment : harness.segments().all()) {
            segments.addEdge(segment.from(), segment.to(), segment.id());
            segments.setEdgeWeight(segment.id(), segment.lengthMetres());
        }
        search = new DijkstraShortestPath<>(segments);
    }

    static Routes routes(Harness harness) {
        Anchors anchors = new Anchors(harness);
        List<Ends> placed = new ArrayList<>();
        Map<BreakoutId, Integer> starts = new HashMap<>();
        for (Wire wire : harness.wires().all()) {
            Ends ends = new Ends(wire, anchors.of(wire.from()), anchors.of(wire.to()));
            if (!ends.from.isEmpty() && !ends.to.isEmpty()) {
                placed.add(ends);
                ends.from.forEach(anchor -> starts.merge(anchor.breakout(), 1, Integer::sum));
                ends.to.forEach(anchor -> starts.merge(anchor.breakout(), 1, Integer::sum));
            }
        }
        return new Router(harness).routes(placed, starts);
    }

    private Routes routes(List<Ends> placed, Map<BreakoutId, Integer> starts) {
        SortedMap<WireId, Route> routes = new TreeMap<>();
        SortedMap<BreakoutId, List<Leg>> legsFrom = new TreeMap<>();
        for (Ends ends : placed) {
            alongOneSegment(ends.from, ends.to).ifPresent(route -> routes.put(ends.wire.id(), route));
            for (Anchor from : ends.from) {
                for (Anchor to : ends.to) {
                    boolean backwards = starts.get(to.breakout()) > starts.get(from.breakout());
                    BreakoutId start = backwards ? to.breakout() : from.breakout();
                    legsFrom.computeIfAbsent(start, id -> new ArrayList<>())
                            .add(new Leg(ends.wire.id(), from, to, backwards));
                }
            }
        }
        legsFrom.forEach((start, legs) -> {
            SingleSourcePaths<BreakoutId, SegmentId> paths = search.getPaths(start);
            for (Leg leg : legs) {
                leg.route(paths, segments::getEdgeWeight)
                        .ifPresent(route -> routes.merge(leg.wire, route, Router::shorter));
            }
        });
        return new Routes(routes);
    }

    private static Route shorter(Route known, Route found) {
        return found.lengthMetres() < known.lengthMetres() ? found : known;
    }

    /** The way between two places along one segment. */
    static Optional<Route> alongOneSegment(List<Anchor> ends, List<Anchor> others) {
        Anchor from = ends.get(0);
        Anchor to = others.get(0);
        if (from.segment().isEmpty() || !from.segment().equals(to.segment())) {
            return Optional.empty();
        }
        double lengthMetres = Math.abs(from.positionMetres() - to.positionMetres());
        return Optional.of(new Route(lengthMetres > 0 ? List.of(from.segment().get()) : List.of(), lengthMetres));
    }

    /**
     * One of the ways a wire could go: from one breakout its end reaches to one its other end reaches.
     *
     * @param backwards whether the search starts at {@code to}
     */
    private record Leg(WireId wire, Anchor from, Anchor to, boolean backwards) {

        Optional<Route> route(SingleSourcePaths<BreakoutId, SegmentId> paths, ToDoubleFunction<SegmentId> lengths) {
            GraphPath<BreakoutId, SegmentId> path = paths.getPath(backwards ? from.breakout() : to.breakout());
            if (path == null) {
                return Optional.empty();
            }
            List<SegmentId> between = new ArrayList<>(path.getEdgeList());
            if (backwards) {
                Collections.reverse(between);
            }
            List<SegmentId> all = new ArrayList<>();
            List<Double> stretches = new ArrayList<>();
            from.segment().ifPresent(segment -> {
                all.add(segment);
                stretches.add(from.stretchMetres());
            });
            for (SegmentId segment : between) {
                all.add(segment);
                stretches.add(lengths.applyAsDouble(segment));
            }
            to.segment().ifPresent(segment -> {
                all.add(segment);
                stretches.add(to.stretchMetres());
            });
            return Optional.of(new Route(all, from.stretchMetres() + path.getWeight() + to.stretchMetres(), stretches));
        }
    }
}
