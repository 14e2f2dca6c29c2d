package org.ohmloom.draw.flow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.ohmloom.draw.Levelling;

/**
 * Columns of nodes and of the ways that pass them, in the order that lets ways cross least (barycentre sweeps) and at heights at
 * which they run level. Nothing overlaps: every node and every passing way has a slot of its own. The method is Sugiyama's (IEEE
 * Transactions on Systems, Man, and Cybernetics 11(2), 1981).
 */
final class FlowPlan {

    private static final int SWEEPS = 24;
    /** Least room between two nodes of a column, mm. */
    static final double LEAST_GAP_MM = 5;

    private static final double PASSING_GAP_MM = 0.6;
    private static final double EDGE_GAP_MM = 1;
    private static final double NODE_MM = 9.4;
    private static final double POINT_MM = 4.4;

    private final double gapMm;
    private final List<List<FlowSlot>> columns = new ArrayList<>();
    private final List<FlowHop> hops = new ArrayList<>();
    private final Map<FlowSlot, List<FlowHop>> into = new HashMap<>();
    private final Map<FlowSlot, List<FlowHop>> outOf = new HashMap<>();
    private final Map<FlowEdge, List<FlowHop>> ways = new LinkedHashMap<>();

    /**
     * A plan.
     *
     * @param bandMm  width that is kept for the band of a way, mm
     * @param labelMm height that is kept above a band where it leaves a node, mm
     * @param gapMm   room between two nodes of a column, mm
     */
    FlowPlan(FlowGraph graph, ToDoubleFunction<FlowEdge> bandMm, double labelMm, double gapMm) {
        this.gapMm = gapMm;
        FlowRanks ranks = new FlowRanks(graph);
        Map<FlowNode, FlowSlot> slots = new LinkedHashMap<>();
        for (FlowNode node : graph.nodes()) {
            FlowSlot slot = new FlowSlot(Optional.of(node), node.isPoint() ? POINT_MM : NODE_MM);
            slots.put(node, slot);
            column(ranks.column(node)).add(slot);
        }
        for (FlowEdge edge : graph.edges()) {
            join(edge, ranks, slots, bandMm.applyAsDouble(edge), labelMm);
        }
        columns.forEach(FlowPlan::number);
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            boolean forward = sweep % 2 == 0;
            for (int k = 0; k < columns.size(); k++) {
                order(columns.get(forward ? k : columns.size() - 1 - k), forward);
            }
        }
        columns.forEach(column -> column.forEach(this::sortPorts));
        columns.forEach(this::stack);
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            boolean forward = sweep % 2 == 0;
            for (int k = 0; k < columns.size(); k++) {
                level(columns.get(forward ? k : columns.size() - 1 - k));
            }
        }
        double top = columns.stream()
                .flatMap(List::stream)
                .mapToDouble(FlowSlot::topMm)
                .min()
                .orElse(0);
        columns.forEach(column -> column.forEach(slot -> slot.moveTo(slot.topMm() - top)));
    }

    List<List<FlowSlot>> columns() {
        return columns;
    }

    /** The stretches of every way, in order from left to right. */
    Map<FlowEdge, List<FlowHop>> ways() {
        return ways;
    }

    private List<FlowSlot> column(int number) {
        while (columns.size() <= number) {
            columns.add(new ArrayList<>());
        }
        return columns.get(number);
    }

    /** A way that would run to the left, or within a column, begins and ends the other way round. */
    private void join(FlowEdge edge, FlowRanks ranks, Map<FlowNode, FlowSlot> slots, double bandMm, double labelMm) {
        boolean straight = ranks.column(edge.from()) <= ranks.column(edge.to());
        FlowNode near = straight ? edge.from() : edge.to();
        FlowNode far = straight ? edge.to() : edge.from();
        int last = Math.max(ranks.column(far), ranks.column(near) + 1);
        FlowSlot here = slots.get(near);
        List<FlowHop> way = new ArrayList<>();
        for (int k = ranks.column(near) + 1; k < last; k++) {
            FlowSlot passing = new FlowSlot(Optional.empty(), 0);
            column(k).add(passing);
            way.add(new FlowHop(edge, here, passing, way.isEmpty(), false));
            here = passing;
        }
        FlowSlot end = slots.get(far);
        if (ranks.column(far) == ranks.column(near)) {
            FlowSlot turn = new FlowSlot(Optional.empty(), 0);
            column(last).add(turn);
            way.add(new FlowHop(edge, here, turn, way.isEmpty(), false));
            way.add(new FlowHop(edge, end, turn, false, true));
        } else {
            way.add(new FlowHop(edge, here, end, way.isEmpty(), true));
        }
        ways.put(edge, way);
        hops.addAll(way);
        for (FlowHop hop : way) {
            outOf.computeIfAbsent(hop.from(), each -> new ArrayList<>()).add(hop);
            into.computeIfAbsent(hop.to(), each -> new ArrayList<>()).add(hop);
            boolean named = hop.first();
            hop.from().ports(false).add(new FlowSlot.Port(hop, bandMm + (named ? labelMm : EDGE_GAP_MM)));
            hop.to().ports(true).add(new FlowSlot.Port(hop, bandMm + EDGE_GAP_MM));
        }
    }

    private static void number(List<FlowSlot> column) {
        for (int k = 0; k < column.size(); k++) {
            column.get(k).stand(k, column.size());
        }
    }

    private void order(List<FlowSlot> column, boolean forward) {
        Map<FlowSlot, Double> wanted = new HashMap<>();
        for (FlowSlot slot : column) {
            List<FlowHop> before = into.getOrDefault(slot, List.of());
            List<FlowHop> after = outOf.getOrDefault(slot, List.of());
            boolean fromLeft = forward ? !before.isEmpty() : after.isEmpty();
            wanted.put(
                    slot,
                    (fromLeft
                                    ? before.stream().map(FlowHop::from)
                                    : after.stream().map(FlowHop::to))
                            .mapToDouble(FlowSlot::share)
                            .average()
                            .orElse(slot.share()));
        }
        column.sort(Comparator.comparingDouble((FlowSlot slot) -> wanted.getOrDefault(slot, slot.share()))
                .thenComparing(FlowSlot::place));
        number(column);
    }

    private void sortPorts(FlowSlot slot) {
        slot.sortPorts(true, hop -> hop.from().share());
        slot.sortPorts(false, hop -> hop.to().share());
    }

    private double gapMm(FlowSlot one, FlowSlot next) {
        return one.node().isEmpty() || next.node().isEmpty() ? PASSING_GAP_MM : gapMm;
    }

    private void stack(List<FlowSlot> column) {
        double y = 0;
        for (int k = 0; k < column.size(); k++) {
            y += k == 0 ? 0 : gapMm(column.get(k - 1), column.get(k));
            column.get(k).moveTo(y);
            y += column.get(k).heightMm();
        }
    }

    /** Moves a column to where its ways run most level, keeping its order and gaps. */
    private void level(List<FlowSlot> column) {
        Levelling levelling = new Levelling();
        double stacked = 0;
        for (int k = 0; k < column.size(); k++) {
            FlowSlot slot = column.get(k);
            stacked += k == 0 ? 0 : column.get(k - 1).heightMm() + gapMm(column.get(k - 1), slot);
            double weight = 0.05;
            double sum = weight * slot.topMm();
            double pull = slot.node().isEmpty() ? 4 : 1;
            for (FlowHop hop : into.getOrDefault(slot, List.of())) {
                sum += pull * (slot.topMm() + hop.from().bottomMm(hop, false) - slot.bottomMm(hop, true));
                weight += pull;
            }
            for (FlowHop hop : outOf.getOrDefault(slot, List.of())) {
                sum += pull * (slot.topMm() + hop.to().bottomMm(hop, true) - slot.bottomMm(hop, false));
                weight += pull;
            }
            levelling.add(stacked, sum / weight, weight);
        }
        List<Double> topsMm = levelling.topsMm();
        for (int k = 0; k < column.size(); k++) {
            column.get(k).moveTo(topsMm.get(k));
        }
    }
}
