package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Columns of a circuit: wires that skip a column get a place in it, every column is put into the order that lets its wires
 * cross least (barycentre sweeps), then into heights at which they run as level as they can. The method is Sugiyama's
 * (IEEE Transactions on Systems, Man, and Cybernetics 11(2), 1981).
 */
final class CircuitPlan {

    private static final int SWEEPS = 12;
    private static final double GAP_MM = 5;
    private static final double PASSING_GAP_MM = 1;

    private final List<List<Stance>> columns = new ArrayList<>();
    private final List<Hop> hops = new ArrayList<>();

    CircuitPlan(CircuitGraph graph) {
        Map<String, Stance> stances = new LinkedHashMap<>();
        graph.cards().forEach((key, card) -> {
            Stance stance = new Stance(Optional.of(card));
            stances.put(key, stance);
            column(graph.column(key)).add(stance);
        });
        for (CircuitGraph.Link link : graph.links()) {
            join(graph, link, stances);
        }
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            boolean forward = sweep % 2 == 0;
            for (int k = 0; k < columns.size(); k++) {
                order(forward ? k : columns.size() - 1 - k);
            }
            sortPorts();
        }
        columns.forEach(CircuitPlan::stack);
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            boolean forward = sweep % 2 == 0;
            for (int k = 0; k < columns.size(); k++) {
                level(columns.get(forward ? k : columns.size() - 1 - k));
            }
        }
    }

    List<List<Stance>> columns() {
        return columns;
    }

    List<Hop> hops() {
        return hops;
    }

    private List<Stance> column(int number) {
        while (columns.size() <= number) {
            columns.add(new ArrayList<>());
        }
        return columns.get(number);
    }

    private void join(CircuitGraph graph, CircuitGraph.Link link, Map<String, Stance> stances) {
        boolean straight = graph.column(link.from()) <= graph.column(link.to());
        String near = straight ? link.from() : link.to();
        String far = straight ? link.to() : link.from();
        Stance from = stances.getOrDefault(near, new Stance(Optional.empty()));
        Stance to = stances.getOrDefault(far, new Stance(Optional.empty()));
        String fromLabel = straight ? link.fromLabel() : link.toLabel();
        String toLabel = straight ? link.toLabel() : link.fromLabel();
        from.ports(false).add(new Stance.Port(link.wire().id(), false, fromLabel));
        int first = graph.column(near);
        int last = graph.column(far);
        to.ports(first != last).add(new Stance.Port(link.wire().id(), from == to, toLabel));
        Stance here = from;
        for (int k = first + 1; k < last; k++) {
            Stance passing = new Stance(Optional.empty());
            column(k).add(passing);
            hops.add(new Hop(link, here, passing, false, k - 1, k == first + 1));
            here = passing;
        }
        hops.add(new Hop(link, here, to, first == last, Math.max(first, last - 1), here == from));
    }

    private void order(int number) {
        List<Stance> column = columns.get(number);
        Map<Stance, Double> wanted = new LinkedHashMap<>();
        for (int k = 0; k < column.size(); k++) {
            Stance stance = column.get(k);
            double own = k / (double) column.size();
            double mean = hops.stream()
                    .filter(hop -> !hop.back() && (hop.from() == stance || hop.to() == stance))
                    .map(hop -> hop.from() == stance ? hop.to() : hop.from())
                    .mapToDouble(this::share)
                    .average()
                    .orElse(own);
            wanted.put(stance, mean);
        }
        column.sort(Comparator.comparingDouble(stance -> wanted.getOrDefault(stance, 0.0)));
    }

    /** Where a stance is in its column, from 0 at the top to 1. */
    private double share(Stance stance) {
        for (List<Stance> column : columns) {
            int k = column.indexOf(stance);
            if (k >= 0) {
                return (k + 0.5) / column.size();
            }
        }
        return 0.5;
    }

    private void sortPorts() {
        for (List<Stance> column : columns) {
            for (Stance stance : column) {
                for (boolean left : new boolean[] {true, false}) {
                    Map<Object, Double> wanted = new LinkedHashMap<>();
                    for (Hop hop : hops) {
                        if (hop.from() == stance && !left) {
                            wanted.put(hop.link().wire().id(), share(hop.to()));
                        } else if (hop.to() == stance && left != hop.back()) {
                            wanted.put(hop.link().wire().id(), share(hop.from()));
                        }
                    }
                    stance.ports(left)
                            .sort(Comparator.comparingDouble(
                                    (Stance.Port port) -> wanted.getOrDefault(port.wire(), 0.5)));
                }
            }
        }
    }

    private static double gapMm(Stance one, Stance next) {
        return one.card().isEmpty() || next.card().isEmpty() ? PASSING_GAP_MM : GAP_MM;
    }

    private static void stack(List<Stance> column) {
        double y = 0;
        for (int k = 0; k < column.size(); k++) {
            y += k == 0 ? 0 : gapMm(column.get(k - 1), column.get(k));
            column.get(k).moveTo(y);
            y += column.get(k).heightMm();
        }
    }

    /** Moves a column to where its wires run most level, keeping its order and gaps. */
    private void level(List<Stance> column) {
        Levelling levelling = new Levelling();
        double stacked = 0;
        for (int k = 0; k < column.size(); k++) {
            Stance stance = column.get(k);
            stacked += k == 0 ? 0 : column.get(k - 1).heightMm() + gapMm(column.get(k - 1), stance);
            double weight = 0.01;
            double sum = weight * stance.topMm();
            for (Hop hop : hops) {
                if (!hop.back() && (hop.from() == stance || hop.to() == stance)) {
                    double off = hop.toMm() - hop.fromMm();
                    sum += hop.weight() * (stance.topMm() + (hop.from() == stance ? off : -off));
                    weight += hop.weight();
                }
            }
            levelling.add(stacked, sum / weight, weight);
        }
        List<Double> topsMm = levelling.topsMm();
        for (int k = 0; k < column.size(); k++) {
            column.get(k).moveTo(topsMm.get(k));
        }
    }
}
