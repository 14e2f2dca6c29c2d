package org.ohmloom.remedy;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.Set;
import org.ohmloom.analysis.LaidWires;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.tables.WireTables;

/**
 * How long wires become when an end moves. With a way on the physical harness the way tells; otherwise the wire grows by the
 * shortest run of other wires between the old place and the new one, and where there is none it keeps its length.
 */
final class Lengths {

    private final Harness harness;
    private final Routes routes;
    private final WireTables tables;

    Lengths(Harness harness, Routes routes, WireTables tables) {
        this.harness = harness;
        this.routes = routes;
        this.tables = tables;
    }

    /** Length of a wire as it lies, m; empty when nothing tells it. */
    OptionalDouble of(Wire wire) {
        return routes.lengthMetres(wire);
    }

    /** Length of a wire with one end moved, m; empty leaves it to its way or unknown. */
    OptionalDouble moved(Wire wire, WireEnd old, WireEnd place) {
        if (wire.lengthMetres().isEmpty()) {
            return OptionalDouble.empty();
        }
        Wire open = wire.withEnds(
                        wire.from().equals(old) ? place : wire.from(),
                        wire.from().equals(old) ? wire.to() : place)
                .withLengthMetres(OptionalDouble.empty());
        OptionalDouble way = LaidWires.of(harness.with(open), tables).routes().lengthMetres(open);
        if (way.isPresent() && way.getAsDouble() > 0) {
            return way;
        }
        OptionalDouble between = between(old, place);
        return between.isPresent()
                ? OptionalDouble.of(wire.lengthMetres().getAsDouble() + between.getAsDouble())
                : wire.lengthMetres();
    }

    /** Shortest run of wires between two places, m; a connector, a component or a chassis body is passed without length. */
    OptionalDouble between(WireEnd one, WireEnd other) {
        Map<Object, Double> metres = new HashMap<>();
        PriorityQueue<Step> open = new PriorityQueue<>();
        Set<Object> done = new HashSet<>();
        open.add(new Step(node(one), 0));
        while (!open.isEmpty()) {
            Step step = open.remove();
            if (!done.add(step.node())) {
                continue;
            }
            if (step.node().equals(node(other))) {
                return OptionalDouble.of(step.metres());
            }
            for (Wire wire : harness.wires().all()) {
                OptionalDouble length = routes.lengthMetres(wire);
                if (length.isPresent()) {
                    visit(step, node(wire.from()), node(wire.to()), length.getAsDouble(), metres, open);
                    visit(step, node(wire.to()), node(wire.from()), length.getAsDouble(), metres, open);
                }
            }
        }
        return OptionalDouble.empty();
    }

    private record Step(Object node, double metres) implements Comparable<Step> {
        @Override
        public int compareTo(Step other) {
            return Double.compare(metres, other.metres);
        }
    }

    private static void visit(
            Step step, Object from, Object to, double length, Map<Object, Double> metres, PriorityQueue<Step> open) {
        double total = step.metres() + length;
        if (from.equals(step.node()) && total < metres.getOrDefault(to, Double.POSITIVE_INFINITY)) {
            metres.put(to, total);
            open.add(new Step(to, total));
        }
    }

    /** Places that lie together: all terminals and connectors of a component, both halves of an in-line pair. */
    private Object node(WireEnd end) {
        if (end instanceof WireEnd.AtTerminal at) {
            return at.component();
        }
        if (end instanceof WireEnd.AtCavity at) {
            Connector connector = harness.connectors().get(at.connector());
            return connector.component().map(Object.class::cast).orElseGet(() -> harness.mate(connector)
                    .map(Connector::id)
                    .filter(mate -> mate.compareTo(at.connector()) < 0)
                    .orElse(at.connector()));
        }
        return end;
    }
}
