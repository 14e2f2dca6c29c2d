package org.ohmloom.signal.pins;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import org.jgrapht.Graph;
import org.jgrapht.alg.flow.mincost.CapacityScalingMinimumCostFlow;
import org.jgrapht.alg.flow.mincost.MinimumCostFlowProblem;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;

/**
 * The assignment of claims to slots with their capacities, each pair at a cost of its own: what is left of the problem when the
 * costs of several claims together and the budgets are left out. As a flow of least cost from the claims to the slots, so that
 * claims that cannot all be served leave as few as possible unserved.
 */
final class Relaxation {
    private static final String SOURCE = "source";
    private static final String SINK = "sink";

    /** More than any allocation costs, so that a claim goes unserved only where it must. */
    static final double UNSERVED = 1e6;

    private Relaxation() {}

    /**
     * A cheapest assignment.
     *
     * @param chosen   the slot of each claim that is served
     * @param costPoints cost of the pairs chosen
     * @param unserved claims without a slot
     */
    record Assigned(Map<Claim, Slot> chosen, double costPoints, List<Claim> unserved) {}

    /**
     * The cheapest assignment of those claims.
     *
     * @param free  how many claims each slot can still take
     * @param costs cost of a pair, 0 or more; infinite when they do not go together
     */
    static Assigned of(List<Claim> claims, Map<Slot, Integer> free, ToDoubleBiFunction<Claim, Slot> costs) {
        Graph<Object, DefaultWeightedEdge> graph = new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
        graph.addVertex(SOURCE);
        graph.addVertex(SINK);
        Map<DefaultWeightedEdge, Integer> capacity = new HashMap<>();
        Map<DefaultWeightedEdge, Claim> claimOf = new LinkedHashMap<>();
        free.forEach((slot, count) -> {
            if (count > 0) {
                graph.addVertex(slot);
                capacity.put(edge(graph, slot, SINK, 0), count);
            }
        });
        for (Claim claim : claims) {
            graph.addVertex(claim);
            capacity.put(edge(graph, SOURCE, claim, 0), 1);
            capacity.put(edge(graph, claim, SINK, UNSERVED), 1);
            free.forEach((slot, count) -> {
                double cost = count > 0 ? costs.applyAsDouble(claim, slot) : Double.POSITIVE_INFINITY;
                if (cost < UNSERVED) {
                    DefaultWeightedEdge edge = edge(graph, claim, slot, cost);
                    capacity.put(edge, 1);
                    claimOf.put(edge, claim);
                }
            });
        }
        var flow = new CapacityScalingMinimumCostFlow<Object, DefaultWeightedEdge>()
                .getMinimumCostFlow(new MinimumCostFlowProblem.MinimumCostFlowProblemImpl<>(
                        graph,
                        vertex -> vertex.equals(SOURCE) ? claims.size() : vertex.equals(SINK) ? -claims.size() : 0,
                        edge -> Optional.ofNullable(capacity.get(edge)).orElse(0),
                        edge -> 0));
        Map<Claim, Slot> chosen = new LinkedHashMap<>();
        double cost = 0;
        for (Map.Entry<DefaultWeightedEdge, Claim> each : claimOf.entrySet()) {
            if (flow.getFlow(each.getKey()) > 0.5) {
                chosen.put(each.getValue(), (Slot) graph.getEdgeTarget(each.getKey()));
                cost += graph.getEdgeWeight(each.getKey());
            }
        }
        List<Claim> unserved =
                claims.stream().filter(claim -> !chosen.containsKey(claim)).toList();
        return new Assigned(chosen, cost, unserved);
    }

    private static DefaultWeightedEdge edge(
            Graph<Object, DefaultWeightedEdge> graph, Object from, Object to, double cost) {
        DefaultWeightedEdge edge = graph.addEdge(from, to);
        graph.setEdgeWeight(edge, cost);
        return edge;
    }
}
