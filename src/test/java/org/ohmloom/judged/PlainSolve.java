package org.ohmloom.judged;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * One dense solution of the whole modified nodal matrix by a general-purpose solver of other people (LUDecomposition of Apache
 * Commons Math 3): an unknown voltage for each point but the datum, an unknown current for each source.
 */
final class PlainSolve {

    private final Map<String, Integer> rows = new LinkedHashMap<>();
    private final String datum;
    private final double[] unknowns;
    private final double[][] matrix;
    private final UnaryOperator<String> root;

    PlainSolve(
            List<PlainNetwork.Resistor> resistors,
            List<PlainNetwork.Current> currents,
            List<PlainNetwork.Source> sources,
            String datum,
            UnaryOperator<String> root) {
        this.datum = datum;
        this.root = root;
        // a regulator that gets no supply gives nothing
        List<PlainNetwork.Source> live =
                sources.stream().filter(each -> each.takenAt().isEmpty()).toList();
        Set<String> reached = reached(resistors, live);
        for (int before = -1; before != live.size(); ) {
            before = live.size();
            Set<String> fed = reached;
            live = sources.stream()
                    .filter(each -> fed.contains(each.low()))
                    .filter(each -> each.takenAt().map(fed::contains).orElse(true))
                    .toList();
            reached = reached(resistors, live);
        }
        reached.stream().filter(point -> !point.equals(datum)).forEach(point -> rows.put(point, rows.size()));
        int size = rows.size() + live.size();
        matrix = new double[size][size];
        double[] right = new double[size];
        for (PlainNetwork.Resistor each : resistors) {
            int one = row(each.one());
            int other = row(each.other());
            add(one, one, 1 / each.ohms());
            add(other, other, 1 / each.ohms());
            add(one, other, -1 / each.ohms());
            add(other, one, -1 / each.ohms());
        }
        for (PlainNetwork.Current each : currents) {
            if (reached.contains(each.from()) && reached.contains(each.to())) {
                add(right, row(each.from()), -each.amps());
                add(right, row(each.to()), each.amps());
            }
        }
        for (int k = 0; k < live.size(); k++) {
            PlainNetwork.Source each = live.get(k);
            int own = rows.size() + k;
            // the current leaves the low point, arrives at the high one: V(high) - V(low) = volts - ohms I
            add(row(each.low()), own, 1);
            add(row(each.high()), own, -1);
            each.takenAt().ifPresent(at -> add(row(at), own, 1));
            each.handedOutAt().ifPresent(at -> add(row(at), own, -1));
            add(own, row(each.high()), 1);
            add(own, row(each.low()), -1);
            add(own, own, each.ohms());
            right[own] = each.volts();
        }
        unknowns = new LUDecomposition(new Array2DRowRealMatrix(matrix, false))
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
    }

    private Set<String> reached(List<PlainNetwork.Resistor> resistors, List<PlainNetwork.Source> sources) {
        Map<String, Set<String>> beside = new HashMap<>();
        resistors.forEach(each -> join(beside, each.one(), each.other()));
        sources.forEach(each -> join(beside, each.low(), each.high()));
        Map<String, Boolean> reached = new LinkedHashMap<>();
        reached.put(datum, true);
        Deque<String> open = new ArrayDeque<>(List.of(datum));
        while (!open.isEmpty()) {
            for (String next : beside.getOrDefault(open.remove(), Set.of())) {
                if (reached.putIfAbsent(next, true) == null) {
                    open.add(next);
                }
            }
        }
        return reached.keySet();
    }

    private static void join(Map<String, Set<String>> beside, String one, String other) {
        beside.computeIfAbsent(one, each -> new LinkedHashSet<>()).add(other);
        beside.computeIfAbsent(other, each -> new LinkedHashSet<>()).add(one);
    }

    private void add(int row, int column, double value) {
        if (row >= 0 && column >= 0) {
            matrix[row][column] += value;
        }
    }

    private static void add(double[] right, int row, double value) {
        if (row >= 0) {
            right[row] += value;
        }
    }

    private int row(String point) {
        return rows.getOrDefault(point, -1);
    }

    /** Whether the point hangs on the datum. */
    boolean has(String point) {
        return root.apply(point).equals(datum) || rows.containsKey(root.apply(point));
    }

    /** Voltage of a point against the datum, V; 0 for one that does not hang on it. */
    double volts(String point) {
        int row = row(root.apply(point));
        return row < 0 ? 0 : unknowns[row];
    }
}
