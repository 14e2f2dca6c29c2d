package org.ohmloom.signal.pins;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import org.jgrapht.Graph;
import org.jgrapht.alg.flow.mincost.CapacityScalingMinimumCostFlow;
import org.jgrapht.alg.flow.mincost.MinimumCostFlowProblem;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.DirectedWeightedMultigraph;

/**
 * The assignment of claims to slots with their capacities, each pair at a cost of its own and each slot at a cost that grows with
 * what it takes: what is left of the problem when the costs of several claims together and the budgets are left out. As a flow of
 * least cost from the claims to the slots, so that claims that cannot all be served leave as few as possible unserved. Claims that
 * are alike are one node of it, and so are slots.
 */
final class Relaxation {
    private static final String SOURCE = "source";
    private static final String SINK = "sink";

    /** More than any allocation costs, so that a claim goes unserved only where it must. */
    static final double UNSERVED = 1e6;

    private final Graph<Object, DefaultWeightedEdge> graph =
            new DirectedWeightedMultigraph<>(DefaultWeightedEdge.class);
    private final Map<DefaultWeightedEdge, Integer> capacity = new HashMap<>();

    private Relaxation() {}

    /**
     * A cheapest assignment.
     *
     * @param chosen   the slot of each claim that is served
     * @param costPoints cost of what is chosen
     * @param unserved claims without a slot
     */
    record Assigned(Map<Claim, Slot> chosen, double costPoints, List<Claim> unserved) {}

    /**
     * A step of the cost of a slot.
     *
     * @param claims     how many claims it holds for
     * @param eachPoints cost of each of them; not less than that of the step before
     */
    record Step(int claims, double eachPoints) {}

    /**
     * What the pairs and slots cost.
     *
     * @param pair      cost of a pair, 0 or more; infinite when they do not go together
     * @param slot      steps of the cost of a slot, cheapest first, together for as many claims as it can still take
     * @param claimKind equal for claims that cost the same everywhere
     * @param slotKind  equal for slots that cost the same for every claim
     */
    record Costs(
            ToDoubleBiFunction<Claim, Slot> pair,
            Function<Slot, List<Step>> slot,
            Function<Claim, Object> claimKind,
            Function<Slot, Object> slotKind) {}

    /** The cheapest assignment by role, range, own limit and locks alone, each slot with room for its capacity. */
    static Assigned byRole(PinProblem problem) {
        Surroundings around = new Surroundings(problem);
        return of(
                problem.claims(),
                problem.slots(),
                new Costs(
                        (claim, slot) -> slot.serves(claim) ? 0 : Double.POSITIVE_INFINITY,
                        slot -> List.of(new Step(slot.capacity(), 0)),
                        claim -> List.of(claim.role(), claim.amps(), claim.locked(), claim.barred()),
                        slot -> List.of(slot.roles(), slot.limitAmps(), slot.capacity(), around.special(slot))));
    }

    /** The cheapest assignment of those claims to those slots. */
    static Assigned of(List<Claim> claims, List<Slot> slots, Costs costs) {
        return new Relaxation().assigned(claims, slots, costs);
    }

    private Assigned assigned(List<Claim> claims, List<Slot> slots, Costs costs) {
        Collection<List<Claim>> kinds = kinds(claims, costs.claimKind());
        Collection<List<Slot>> places = kinds(slots, costs.slotKind());
        graph.addVertex(SOURCE);
        graph.addVertex(SINK);
        places.forEach(place -> {
            graph.addVertex(place);
            costs.slot()
                    .apply(place.get(0))
                    .forEach(step -> edge(place, SINK, step.claims() * place.size(), step.eachPoints()));
        });
        Map<DefaultWeightedEdge, List<Claim>> pairs = new LinkedHashMap<>();
        for (List<Claim> kind : kinds) {
            graph.addVertex(kind);
            edge(SOURCE, kind, kind.size(), 0);
            edge(kind, SINK, kind.size(), UNSERVED);
            for (List<Slot> place : places) {
                double cost = costs.pair().applyAsDouble(kind.get(0), place.get(0));
                if (cost < UNSERVED) {
                    pairs.put(edge(kind, place, kind.size(), cost), kind);
                }
            }
        }
        var flow = new CapacityScalingMinimumCostFlow<Object, DefaultWeightedEdge>()
                .getMinimumCostFlow(new MinimumCostFlowProblem.MinimumCostFlowProblemImpl<>(
                        graph,
                        vertex -> vertex.equals(SOURCE) ? claims.size() : vertex.equals(SINK) ? -claims.size() : 0,
                        edge -> Optional.ofNullable(capacity.get(edge)).orElse(0),
                        edge -> 0));
        return dealt(claims, pairs, places, costs, flow.getFlowMap());
    }

    /** Deals what flows between kinds out to their claims and slots, slot by slot. */
    private Assigned dealt(
            List<Claim> claims,
            Map<DefaultWeightedEdge, List<Claim>> pairs,
            Collection<List<Slot>> places,
            Costs costs,
            Map<DefaultWeightedEdge, Double> flow) {
        Map<Object, Deque<Claim>> left = new HashMap<>();
        Map<Object, Deque<Slot>> rooms = new HashMap<>();
        for (List<Slot> place : places) {
            Deque<Slot> room = rooms.computeIfAbsent(place, key -> new ArrayDeque<>());
            int each = costs.slot().apply(place.get(0)).stream()
                    .mapToInt(Step::claims)
                    .sum();
            place.forEach(slot -> {
                for (int k = 0; k < each; k++) {
                    room.add(slot);
                }
            });
        }
        Map<Claim, Slot> chosen = new LinkedHashMap<>();
        pairs.forEach((edge, kind) -> {
            Deque<Claim> waiting = left.computeIfAbsent(kind, key -> new ArrayDeque<>(kind));
            for (long k = Math.round(flow.get(edge)); k > 0; k--) {
                chosen.put(
                        waiting.remove(), rooms.get(graph.getEdgeTarget(edge)).remove());
            }
        });
        double cost = 0;
        for (Map.Entry<DefaultWeightedEdge, Double> each : flow.entrySet()) {
            double weight = graph.getEdgeWeight(each.getKey());
            cost += weight < UNSERVED ? weight * each.getValue() : 0;
        }
        return new Assigned(
                chosen,
                cost,
                claims.stream().filter(claim -> !chosen.containsKey(claim)).toList());
    }

    private static <T> Collection<List<T>> kinds(List<T> all, Function<T, Object> kind) {
        Map<Object, List<T>> kinds = new LinkedHashMap<>();
        all.forEach(each -> kinds.computeIfAbsent(kind.apply(each), key -> new ArrayList<>())
                .add(each));
        return kinds.values();
    }

    private DefaultWeightedEdge edge(Object from, Object to, int most, double cost) {
        DefaultWeightedEdge edge = graph.addEdge(from, to);
        graph.setEdgeWeight(edge, cost);
        capacity.put(edge, most);
        return edge;
    }
}
