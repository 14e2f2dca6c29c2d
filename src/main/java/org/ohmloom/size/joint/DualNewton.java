package org.ohmloom.size.joint;

/** The Newton direction of the dual of a {@link Relaxation} over the prices that are free to move. */
final class DualNewton {
    private static final double RESIDUAL_RATIO = 1e-10;
    /** Share of its own diagonal each equation is stiffened by, so that the system has one solution. */
    private static final double STIFFENING = 1e-9;

    private final Relaxation relaxation;
    private int steps;

    DualNewton(Relaxation relaxation) {
        this.relaxation = relaxation;
    }

    /** Steps of conjugate gradients the last direction took. */
    int steps() {
        return steps;
    }

    /** The direction in which all prices should move together, within so many steps of conjugate gradients. */
    double[] direction(double[] prices, int mostSteps) {
        double[] sums = relaxation.weightSums(prices);
        double[] slope = new double[prices.length];
        boolean[] free = new boolean[prices.length];
        for (int budget = 0; budget < prices.length; budget++) {
            double excess = relaxation.excessVolts(budget, sums);
            free[budget] = Double.isFinite(excess) && (prices[budget] > 0 || excess > 0);
            slope[budget] = free[budget] ? excess : 0;
        }
        double[] bend = bend(sums);
        return conjugateGradients(bend, slope, diagonal(bend, free), free, mostSteps);
    }

    /** How fast what a part spends per weight falls with its weight: 1 / (2 w sqrt(w)) while it moves. */
    private double[] bend(double[] sums) {
        double[] bend = new double[sums.length];
        for (int part = 0; part < sums.length; part++) {
            if (relaxation.moves(part, sums[part])) {
                bend[part] = 0.5 / (sums[part] * Math.sqrt(sums[part]));
            }
        }
        return bend;
    }

    private double[] diagonal(double[] bend, boolean[] free) {
        double[] diagonal = new double[free.length];
        double largest = 0;
        for (int budget = 0; budget < free.length; budget++) {
            int[] parts = relaxation.partsOf(budget);
            double[] weights = relaxation.weightsOf(budget);
            for (int k = 0; k < parts.length; k++) {
                diagonal[budget] += weights[k] * weights[k] * bend[parts[k]];
            }
            largest = Math.max(largest, diagonal[budget]);
        }
        for (int budget = 0; budget < free.length; budget++) {
            diagonal[budget] = Math.max(diagonal[budget], largest * 1e-12);
            diagonal[budget] = diagonal[budget] > 0 ? diagonal[budget] : 1;
        }
        return diagonal;
    }

    private double[] conjugateGradients(
            double[] bend, double[] slope, double[] diagonal, boolean[] free, int mostSteps) {
        int count = slope.length;
        double[] solution = new double[count];
        double[] residual = slope.clone();
        double[] search = new double[count];
        double before = 1;
        double stop = RESIDUAL_RATIO * RESIDUAL_RATIO * scaled(residual, diagonal);
        for (steps = 0; steps < mostSteps; steps++) {
            double size = scaled(residual, diagonal);
            if (size <= stop || size == 0) {
                break;
            }
            double keep = steps == 0 ? 0 : size / before;
            for (int k = 0; k < count; k++) {
                search[k] = residual[k] / diagonal[k] + keep * search[k];
            }
            double[] image = times(bend, search, diagonal, free);
            double curve = 0;
            for (int k = 0; k < count; k++) {
                curve += search[k] * image[k];
            }
            if (curve <= 0) {
                break;
            }
            double length = size / curve;
            for (int k = 0; k < count; k++) {
                solution[k] += length * search[k];
                residual[k] -= length * image[k];
            }
            before = size;
        }
        return solution;
    }

    private static double scaled(double[] residual, double[] diagonal) {
        double sum = 0;
        for (int k = 0; k < residual.length; k++) {
            sum += residual[k] * residual[k] / diagonal[k];
        }
        return sum;
    }

    private double[] times(double[] bend, double[] vector, double[] diagonal, boolean[] free) {
        double[] sums = relaxation.weightSums(vector);
        double[] image = new double[vector.length];
        for (int budget = 0; budget < vector.length; budget++) {
            if (free[budget]) {
                int[] parts = relaxation.partsOf(budget);
                double[] weights = relaxation.weightsOf(budget);
                double sum = STIFFENING * diagonal[budget] * vector[budget];
                for (int k = 0; k < parts.length; k++) {
                    sum += weights[k] * bend[parts[k]] * sums[parts[k]];
                }
                image[budget] = sum;
            }
        }
        return image;
    }
}
