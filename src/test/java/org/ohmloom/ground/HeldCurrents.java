package org.ohmloom.ground;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.PointId;
import org.ohmloom.solve.BranchFlow;

/**
 * The independent answer: resistances and one source as a dense modified nodal matrix, solved by a general solver written by other
 * people (LUDecomposition of Apache Commons Math 3), every other branch a current that is held at its solved value or set to
 * zero.
 */
final class HeldCurrents {

    private final List<BranchFlow> flows;
    private final BranchFlow source;
    private final Map<PointId, Integer> rows = new TreeMap<>();
    private final Map<PointId, PointId> group = new HashMap<>();
    private final DecompositionSolver solver;
    private final double emfVolts;

    /** Holds the flows of a solved network that hangs together with its source by resistances. */
    HeldCurrents(List<BranchFlow> flows, BranchId source, PointId datum) {
        this.flows = flows;
        this.source = flows.stream()
                .filter(flow -> flow.branch().id().equals(source))
                .findFirst()
                .orElseThrow();
        flows.stream()
                .filter(this::isLinear)
                .forEach(flow -> join(flow.branch().from(), flow.branch().to()));
        for (BranchFlow flow : flows) {
            for (PointId point : List.of(flow.branch().from(), flow.branch().to())) {
                if (root(point).equals(root(datum)) && !point.equals(datum)) {
                    rows.putIfAbsent(point, rows.size());
                }
            }
        }
        Law.VoltageSource law = (Law.VoltageSource) this.source.branch().law();
        double ohms = this.source.amps() < 0 ? law.chargeOhms() : law.ohms();
        emfVolts = ohms * this.source.amps() - this.source.dropVolts();
        double[][] matrix = new double[rows.size() + 1][rows.size() + 1];
        for (BranchFlow flow : flows) {
            int from = row(flow.branch().from());
            int to = row(flow.branch().to());
            if (flow.ohms().isPresent() && (from >= 0 || to >= 0)) {
                double siemens = 1 / flow.ohms().getAsDouble();
                add(matrix, from, from, siemens);
                add(matrix, to, to, siemens);
                add(matrix, from, to, -siemens);
                add(matrix, to, from, -siemens);
            }
        }
        int own = rows.size();
        add(matrix, row(this.source.branch().from()), own, 1);
        add(matrix, row(this.source.branch().to()), own, -1);
        add(matrix, own, row(this.source.branch().to()), 1);
        add(matrix, own, row(this.source.branch().from()), -1);
        matrix[own][own] += ohms;
        solver = new LUDecomposition(new Array2DRowRealMatrix(matrix, false)).getSolver();
    }

    private boolean isLinear(BranchFlow flow) {
        return flow.ohms().isPresent() || flow == source;
    }

    /** V(at) - V(reference) with the current of one branch set to zero and all others held; of the source, its voltage. */
    double voltsWithout(BranchId silent, PointId at, PointId reference) {
        double[] right = new double[rows.size() + 1];
        for (BranchFlow flow : flows) {
            if (!isLinear(flow) && !flow.branch().id().equals(silent)) {
                inject(right, flow.branch().from(), -flow.amps());
                inject(right, flow.branch().to(), flow.amps());
            }
        }
        right[rows.size()] = source.branch().id().equals(silent) ? 0 : emfVolts;
        double[] volts = solver.solve(new ArrayRealVector(right, false)).toArray();
        return volts(volts, at) - volts(volts, reference);
    }

    private double volts(double[] volts, PointId point) {
        int row = row(point);
        return row < 0 ? 0 : volts[row];
    }

    private void inject(double[] right, PointId point, double amps) {
        if (row(point) >= 0) {
            right[row(point)] += amps;
        }
    }

    private int row(PointId point) {
        return rows.getOrDefault(point, -1);
    }

    private static void add(double[][] matrix, int row, int column, double value) {
        if (row >= 0 && column >= 0) {
            matrix[row][column] += value;
        }
    }

    private PointId root(PointId point) {
        PointId at = point;
        while (group.containsKey(at)) {
            at = group.get(at);
        }
        return at;
    }

    private void join(PointId one, PointId other) {
        if (!root(one).equals(root(other))) {
            group.put(root(one), root(other));
        }
    }
}
