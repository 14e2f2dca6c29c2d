package org.ohmloom.bench;

import java.util.ArrayList;
import java.util.List;

/**
 * Resistance between two points of a net of resistances, by nodal analysis: the conductances of the net with the first
 * point grounded, factored once (Cholesky; the matrix is symmetric and, for a net in one piece, positive definite), and
 * one ampere sent into the other point: its volts are the ohms between the two.
 * <p>Cost grows with the third power of the points of one net; nets of a harness are small.
 */
final class NetOhms {
    /** Stands in for a resistance of nothing, ohm: a millionth of the least a bench instrument shows. */
    static final double LEAST_OHMS = 1e-9;

    private record Edge(int from, int to, double ohms) {}

    private final int points;
    private final List<Edge> edges = new ArrayList<>();

    /** A net of so many points, numbered from 0. */
    NetOhms(int points) {
        this.points = points;
    }

    void add(int from, int to, double ohms) {
        if (from != to) {
            edges.add(new Edge(from, to, Math.max(ohms, LEAST_OHMS)));
        }
    }

    /** Resistance from point 0 to every point, ohm. */
    double[] fromFirst() {
        double[] ohms = new double[points];
        if (points < 2) {
            return ohms;
        }
        double[][] factor = factored();
        for (int target = 1; target < points; target++) {
            ohms[target] = volts(factor, target - 1);
        }
        return ohms;
    }

    /** The lower factor L of the conductances without the row of point 0: L times its transpose. */
    private double[][] factored() {
        int n = points - 1;
        double[][] siemens = new double[n][n];
        for (Edge edge : edges) {
            double conductance = 1 / edge.ohms;
            int a = edge.from - 1;
            int b = edge.to - 1;
            if (a >= 0) {
                siemens[a][a] += conductance;
            }
            if (b >= 0) {
                siemens[b][b] += conductance;
            }
            if (a >= 0 && b >= 0) {
                siemens[Math.max(a, b)][Math.min(a, b)] -= conductance;
            }
        }
        for (int column = 0; column < n; column++) {
            for (int row = column; row < n; row++) {
                double sum = siemens[row][column];
                for (int k = 0; k < column; k++) {
                    sum -= siemens[row][k] * siemens[column][k];
                }
                siemens[row][column] = row == column ? Math.sqrt(sum) : sum / siemens[column][column];
            }
        }
        return siemens;
    }

    /** Volts at a point into which one ampere flows: the squared length of the solution of L y = e. */
    private static double volts(double[][] factor, int target) {
        double[] y = new double[factor.length];
        double squares = 0;
        for (int row = target; row < factor.length; row++) {
            double sum = row == target ? 1 : 0;
            for (int k = target; k < row; k++) {
                sum -= factor[row][k] * y[k];
            }
            y[row] = sum / factor[row][row];
            squares += y[row] * y[row];
        }
        return squares;
    }
}
