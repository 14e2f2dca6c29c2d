package org.ohmloom.solve;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * Hastens a search for x = g(x): the next x is that mixture of the last ones whose misses cancel best (Anderson, Journal of
 * the ACM 12, 1965). For a straight g it arrives as fast as a method of conjugate directions, also where plain repetition would
 * run away. The x here are voltages.
 */
final class Anderson {

    private static final int DEPTH = 6;
    private static final double RIDGE_RATIO = 1e-14;

    private record Change(double[] stepVolts, double[] missVolts) {}

    private final Deque<Change> changes = new ArrayDeque<>();
    private double[] lastAt = {};
    private double[] lastMiss = {};

    /**
     * The next place to look.
     *
     * @param at where g was looked up
     * @param to what it gave
     */
    double[] next(double[] at, double[] to) {
        double[] miss = minus(to, at);
        if (lastAt.length == at.length) {
            changes.addLast(new Change(minus(at, lastAt), minus(miss, lastMiss)));
            if (changes.size() > DEPTH) {
                changes.removeFirst();
            }
        }
        lastAt = at.clone();
        lastMiss = miss;
        List<Change> known = List.copyOf(changes);
        double[] share = shares(known, miss);
        double[] next = to.clone();
        for (int each = 0; each < known.size(); each++) {
            for (int place = 0; place < next.length; place++) {
                next[place] -= share[each]
                        * (known.get(each).stepVolts()[place] + known.get(each).missVolts()[place]);
            }
        }
        return next;
    }

    /** Least squares by the normal equations, a little stiffened so that changes in one direction do no harm. */
    private static double[] shares(List<Change> known, double[] miss) {
        int size = known.size();
        double[][] matrix = new double[size][size + 1];
        double largest = 0;
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < size; column++) {
                matrix[row][column] =
                        dot(known.get(row).missVolts(), known.get(column).missVolts());
            }
            matrix[row][size] = dot(known.get(row).missVolts(), miss);
            largest = Math.max(largest, matrix[row][row]);
        }
        for (int row = 0; row < size; row++) {
            matrix[row][row] += RIDGE_RATIO * largest;
        }
        return largest > 0 ? solve(matrix) : new double[size];
    }

    /** Gaussian elimination with row exchange; the last column is the right-hand side. */
    private static double[] solve(double[][] matrix) {
        int size = matrix.length;
        for (int pivot = 0; pivot < size; pivot++) {
            int best = pivot;
            for (int row = pivot + 1; row < size; row++) {
                if (Math.abs(matrix[row][pivot]) > Math.abs(matrix[best][pivot])) {
                    best = row;
                }
            }
            double[] swapped = matrix[pivot];
            matrix[pivot] = matrix[best];
            matrix[best] = swapped;
            if (matrix[pivot][pivot] == 0) {
                return new double[size];
            }
            for (int row = pivot + 1; row < size; row++) {
                double factor = matrix[row][pivot] / matrix[pivot][pivot];
                for (int column = pivot; column <= size; column++) {
                    matrix[row][column] -= factor * matrix[pivot][column];
                }
            }
        }
        double[] solution = new double[size];
        for (int row = size - 1; row >= 0; row--) {
            double rest = matrix[row][size];
            for (int column = row + 1; column < size; column++) {
                rest -= matrix[row][column] * solution[column];
            }
            solution[row] = rest / matrix[row][row];
        }
        return solution;
    }

    private static double dot(double[] one, double[] other) {
        double dot = 0;
        for (int place = 0; place < one.length; place++) {
            dot += one[place] * other[place];
        }
        return dot;
    }

    private static double[] minus(double[] one, double[] other) {
        double[] difference = one.clone();
        Arrays.setAll(difference, place -> one[place] - other[place]);
        return difference;
    }
}
