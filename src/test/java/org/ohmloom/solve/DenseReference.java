package org.ohmloom.solve;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;

/**
 * The independent answer: a general-purpose dense solver written by other people (LUDecomposition of Apache Commons Math 3)
 * on the whole modified nodal matrix, its answer refined with residuals in decimal numbers of 50 digits.
 *
 * <p>One unknown voltage for each point but the datum, one unknown current for each source. Batteries, resistances and
 * fixed currents only.
 */
final class DenseReference {

    private static final MathContext DIGITS = new MathContext(50);
    private static final int ROUNDS = 6;

    private final List<Branch> branches;
    private final Map<PointId, Integer> rows = new TreeMap<>();
    private final List<Branch> sources = new ArrayList<>();
    private final BigDecimal[] unknowns;

    DenseReference(Network network) {
        branches = network.all();
        for (PointId point : network.points()) {
            if (!point.equals(network.datum().orElseThrow())) {
                rows.put(point, rows.size());
            }
        }
        branches.stream()
                .filter(branch -> branch.law() instanceof Law.VoltageSource)
                .forEach(sources::add);
        unknowns = new BigDecimal[rows.size() + sources.size()];
        Arrays.fill(unknowns, BigDecimal.ZERO);
        DecompositionSolver solver = new LUDecomposition(new Array2DRowRealMatrix(matrix(), false)).getSolver();
        for (int round = 0; round < ROUNDS; round++) {
            double[] missing = new double[unknowns.length];
            BigDecimal[] residual = residual();
            for (int row = 0; row < missing.length; row++) {
                missing[row] = residual[row].doubleValue();
            }
            double[] step = solver.solve(new ArrayRealVector(missing, false)).toArray();
            for (int row = 0; row < step.length; row++) {
                unknowns[row] = unknowns[row].add(new BigDecimal(step[row]), DIGITS);
            }
        }
    }

    private double[][] matrix() {
        double[][] matrix = new double[unknowns.length][unknowns.length];
        for (Branch branch : branches) {
            int from = row(branch.from());
            int to = row(branch.to());
            if (branch.law() instanceof Law.Resistance resistance) {
                double siemens = 1 / resistance.ohms();
                add(matrix, from, from, siemens);
                add(matrix, to, to, siemens);
                add(matrix, from, to, -siemens);
                add(matrix, to, from, -siemens);
            } else if (branch.law() instanceof Law.VoltageSource source) {
                int own = rows.size() + sources.indexOf(branch);
                add(matrix, from, own, 1);
                add(matrix, to, own, -1);
                add(matrix, own, to, 1);
                add(matrix, own, from, -1);
                add(matrix, own, own, source.ohms());
            }
        }
        return matrix;
    }

    private static void add(double[][] matrix, int row, int column, double value) {
        if (row >= 0 && column >= 0) {
            matrix[row][column] += value;
        }
    }

    /** Right-hand side minus matrix times unknowns. */
    private BigDecimal[] residual() {
        BigDecimal[] residual = new BigDecimal[unknowns.length];
        Arrays.fill(residual, BigDecimal.ZERO);
        for (Branch branch : branches) {
            BigDecimal amps = amps(branch);
            int from = row(branch.from());
            int to = row(branch.to());
            if (from >= 0) {
                residual[from] = residual[from].subtract(amps, DIGITS);
            }
            if (to >= 0) {
                residual[to] = residual[to].add(amps, DIGITS);
            }
            if (branch.law() instanceof Law.VoltageSource source) {
                int own = rows.size() + sources.indexOf(branch);
                residual[own] = new BigDecimal(source.emfVolts())
                        .subtract(new BigDecimal(source.ohms()).multiply(amps, DIGITS), DIGITS)
                        .add(drop(branch), DIGITS);
            }
        }
        return residual;
    }

    /** V(from) - V(to), V. */
    BigDecimal drop(Branch branch) {
        return volts(branch.from()).subtract(volts(branch.to()), DIGITS);
    }

    /** Voltage of a point, V. */
    BigDecimal volts(PointId point) {
        int row = row(point);
        return row < 0 ? BigDecimal.ZERO : unknowns[row];
    }

    /** Current of a branch, A. */
    BigDecimal amps(Branch branch) {
        if (branch.law() instanceof Law.Resistance resistance) {
            return drop(branch).divide(new BigDecimal(resistance.ohms()), DIGITS);
        }
        if (branch.law() instanceof Law.FixedCurrent current) {
            return new BigDecimal(current.amps());
        }
        return unknowns[rows.size() + sources.indexOf(branch)];
    }

    private int row(PointId point) {
        return rows.getOrDefault(point, -1);
    }
}
