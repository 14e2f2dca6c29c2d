package org.ohmloom.signal.way;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.WeightedMultigraph;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;

/** Ways over the bundle segments and through in-line pairs of connectors, such as bulkheads. */
public final class Ways {

    /** How much longer a way may be before it goes through one more pair of connectors, m. */
    private static final double PAIR_METRES = 0.01;

    /** A stretch of a way: along a segment, or through a pair of connectors. */
    private sealed interface Stretch {
        record Along(SegmentId segment) implements Stretch {}

        record Through(ConnectorId one, ConnectorId other) implements Stretch {}
    }

    /**
     * A step of a way.
     *
     * @param to      where it leads
     * @param segment the segment it goes along, empty through a pair
     * @param near    the connector it enters, empty along a segment
     * @param far     the connector it leaves by, empty along a segment
     * @param metres  its length, m
     */
    public record Step(
            BreakoutId to,
            Optional<SegmentId> segment,
            Optional<ConnectorId> near,
            Optional<ConnectorId> far,
            double metres) {

        /** Whether it goes through a pair of connectors. */
        public boolean isThrough() {
            return near.isPresent();
        }

        /** What it counts where ways are compared, m: its length, a little through a pair. */
        public double comparedMetres() {
            return isThrough() ? PAIR_METRES : metres;
        }
    }

    private final Harness harness;
    private final Predicate<Connector> open;

    /** Ways of a harness through the in-line connectors that are open. */
    public Ways(Harness harness, Predicate<Connector> open) {
        this.harness = harness;
        this.open = open;
    }

    /**
     * The shortest way; empty when there is none, or where one of the places is not known. A way from a place to itself has no
     * steps.
     */
    public Optional<List<Step>> way(Optional<BreakoutId> from, Optional<BreakoutId> to) {
        return from.isPresent() && to.isPresent()
                ? Optional.ofNullable(new DijkstraShortestPath<>(graph()).getPath(from.get(), to.get()))
                        .map(this::steps)
                : Optional.empty();
    }

    private WeightedMultigraph<BreakoutId, Stretch> graph() {
        WeightedMultigraph<BreakoutId, Stretch> graph = new WeightedMultigraph<>(Stretch.class);
        harness.breakouts().ids().forEach(graph::addVertex);
        harness.segments().all().forEach(segment -> {
            Stretch along = new Stretch.Along(segment.id());
            graph.addEdge(segment.from(), segment.to(), along);
            graph.setEdgeWeight(along, segment.lengthMetres());
        });
        for (Connector one : harness.connectors().all()) {
            Optional<Connector> other = harness.mate(one);
            if (other.isPresent() && one.id().compareTo(other.get().id()) < 0 && open.test(one)) {
                Optional<BreakoutId> here = harness.breakout(one);
                Optional<BreakoutId> there = harness.breakout(other.get());
                if (here.isPresent() && there.isPresent() && !here.equals(there)) {
                    Stretch through = new Stretch.Through(one.id(), other.get().id());
                    graph.addEdge(here.get(), there.get(), through);
                    graph.setEdgeWeight(through, PAIR_METRES);
                }
            }
        }
        return graph;
    }

    private List<Step> steps(GraphPath<BreakoutId, Stretch> path) {
        List<Step> steps = new ArrayList<>();
        List<BreakoutId> places = path.getVertexList();
        for (int k = 0; k < path.getEdgeList().size(); k++) {
            steps.add(step(path.getEdgeList().get(k), places.get(k), places.get(k + 1)));
        }
        return List.copyOf(steps);
    }

    private Step step(Stretch stretch, BreakoutId from, BreakoutId to) {
        if (stretch instanceof Stretch.Along along) {
            return new Step(
                    to,
                    Optional.of(along.segment()),
                    Optional.empty(),
                    Optional.empty(),
                    harness.segments().get(along.segment()).lengthMetres());
        }
        Stretch.Through through = (Stretch.Through) stretch;
        boolean forward = harness.breakout(harness.connectors().get(through.one()))
                .filter(from::equals)
                .isPresent();
        return new Step(
                to,
                Optional.empty(),
                Optional.of(forward ? through.one() : through.other()),
                Optional.of(forward ? through.other() : through.one()),
                0);
    }

    /** Length of the shortest way, m; empty when there is none, or where one of the places is not known. */
    public OptionalDouble metres(Optional<BreakoutId> from, Optional<BreakoutId> to) {
        return way(from, to).stream().mapToDouble(Ways::metres).findFirst();
    }

    /** Length of the shortest way to each of some places, m; those that none leads to are left out. */
    public Map<BreakoutId, Double> metres(BreakoutId from, Collection<BreakoutId> places) {
        var paths = new DijkstraShortestPath<>(graph()).getPaths(from);
        Map<BreakoutId, Double> metres = new TreeMap<>();
        places.forEach(place ->
                Optional.ofNullable(paths.getPath(place)).ifPresent(path -> metres.put(place, metres(steps(path)))));
        return metres;
    }

    private static double metres(List<Step> steps) {
        return steps.stream().mapToDouble(Step::metres).sum();
    }

    /** The thing that is reached by the shortest way, the first of equal ones; empty where no way leads to any. */
    public <T> Optional<T> nearest(
            Optional<BreakoutId> from, Collection<T> things, Function<T, Optional<BreakoutId>> at) {
        Optional<T> nearest = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (T thing : things) {
            double metres = metres(from, at.apply(thing)).orElse(Double.POSITIVE_INFINITY);
            if (metres < least) {
                nearest = Optional.of(thing);
                least = metres;
            }
        }
        return nearest;
    }
}
