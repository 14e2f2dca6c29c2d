package org.ohmloom.signal.unit;

import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.WeightedMultigraph;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;

/** How far components lie from control units along the bundle segments and through in-line pairs of connectors. */
final class UnitDistances {
    private final Harness harness;
    private final WeightedMultigraph<BreakoutId, DefaultWeightedEdge> graph =
            new WeightedMultigraph<>(DefaultWeightedEdge.class);
    private final Map<BreakoutId, Map<String, Double>> known = new HashMap<>();
    private final Map<String, BreakoutId> units = new TreeMap<>();

    UnitDistances(Harness harness, Iterable<Component> controlUnits) {
        this.harness = harness;
        harness.breakouts().ids().forEach(graph::addVertex);
        harness.segments().all().forEach(each -> edge(each.from(), each.to(), each.lengthMetres()));
        for (Connector one : harness.connectors().all()) {
            Optional<BreakoutId> here = harness.breakout(one);
            Optional<BreakoutId> there =
                    one.mate().map(harness.connectors()::get).flatMap(harness::breakout);
            if (here.isPresent() && there.isPresent() && !here.equals(there)) {
                edge(here.get(), there.get(), 0);
            }
        }
        for (Component unit : controlUnits) {
            at(unit).ifPresent(place -> units.put(unit.id().value(), place));
        }
    }

    private void edge(BreakoutId from, BreakoutId to, double metres) {
        graph.setEdgeWeight(graph.addEdge(from, to), metres);
    }

    /** Where a component is reached: at its first connector, else by itself. */
    private Optional<BreakoutId> at(Component component) {
        return harness.connectors().all().stream()
                .filter(each -> each.component().filter(component.id()::equals).isPresent())
                .map(harness::breakout)
                .flatMap(Optional::stream)
                .findFirst()
                .or(component::at);
    }

    /** Metres to each unit that can be reached; empty where the component has no place. */
    Map<String, Double> metres(Component component) {
        return at(component)
                .map(place -> known.computeIfAbsent(place, this::measured))
                .orElse(Map.of());
    }

    private Map<String, Double> measured(BreakoutId from) {
        var ways = new DijkstraShortestPath<>(graph).getPaths(from);
        Map<String, Double> metres = new TreeMap<>();
        units.forEach((unit, place) -> {
            double length = ways.getWeight(place);
            if (Double.isFinite(length)) {
                metres.put(unit, length);
            }
        });
        return Collections.unmodifiableMap(metres);
    }
}
