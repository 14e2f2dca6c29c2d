package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import org.ohmloom.model.Wire;

/** Electrical places of the diagram with what leads from one to another, and how far each is from where one starts. */
final class TerminalGraph {

    /** What crosses a load or goes against the usual way costs as much as this many ordinary steps. */
    static final int FAR = 1000;

    /**
     * How a place is reached.
     *
     * @param cost steps from the start
     * @param from the place before; empty at the start
     * @param by   the wire that leads here, if it is one
     */
    record Step(int cost, Optional<String> from, Optional<Wire> by) {}

    private record Edge(String to, int cost, Optional<Wire> by) {}

    private record Waiting(int cost, int turn, String place) {}

    private final Map<String, List<Edge>> edges = new HashMap<>();

    void wire(String one, String two, Wire wire) {
        edge(one, two, 1, Optional.of(wire));
        edge(two, one, 1, Optional.of(wire));
    }

    /** A way both ways through something. */
    void passage(String one, String two, int cost) {
        edge(one, two, cost, Optional.empty());
        edge(two, one, cost, Optional.empty());
    }

    /** A way that is usual one way and far the other. */
    void oneWay(String from, String to) {
        edge(from, to, 1, Optional.empty());
        edge(to, from, FAR, Optional.empty());
    }

    private void edge(String from, String to, int cost, Optional<Wire> by) {
        edges.computeIfAbsent(from, each -> new ArrayList<>()).add(new Edge(to, cost, by));
    }

    /** How each place is reached from the nearest start; starts in order, each with what it costs to begin there. */
    Map<String, Step> from(Map<String, Integer> starts) {
        Map<String, Step> reached = new HashMap<>();
        PriorityQueue<Waiting> waiting =
                new PriorityQueue<>(Comparator.comparingInt(Waiting::cost).thenComparingInt(Waiting::turn));
        int turn = 0;
        for (Map.Entry<String, Integer> start : starts.entrySet()) {
            reached.put(start.getKey(), new Step(start.getValue(), Optional.empty(), Optional.empty()));
            waiting.add(new Waiting(start.getValue(), turn++, start.getKey()));
        }
        while (!waiting.isEmpty()) {
            Waiting here = waiting.remove();
            if (here.cost() > reached.get(here.place()).cost()) {
                continue;
            }
            for (Edge edge : edges.getOrDefault(here.place(), List.of())) {
                int cost = here.cost() + edge.cost();
                Step known = reached.get(edge.to());
                if (known == null || cost < known.cost()) {
                    reached.put(edge.to(), new Step(cost, Optional.of(here.place()), edge.by()));
                    waiting.add(new Waiting(cost, turn++, edge.to()));
                }
            }
        }
        return reached;
    }
}
