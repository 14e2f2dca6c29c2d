package org.ohmloom.analysis.tolerance;

/**
 * The quantile of the standard normal distribution, by halving on its distribution function: the series of Abramowitz and
 * Stegun, Handbook of Mathematical Functions (1964), 26.2.11. Exact to the last few digits and the same everywhere.
 */
final class NormalQuantile {

    private static final double FARTHEST = 9;
    private static final int HALVINGS = 60;
    private static final int MOST_TERMS = 300;

    private NormalQuantile() {}

    /** How many standard deviations above the mean the value lies that a share of all lie below. */
    static double of(double share) {
        if (share > 0.5) {
            return -of(1 - share);
        }
        double low = -FARTHEST;
        double high = 0;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (low + high) / 2;
            if (below(middle) < share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Share of values below x standard deviations above the mean. */
    static double below(double x) {
        double term = x;
        double sum = x;
        for (int k = 1; k < MOST_TERMS && Math.abs(term) > 1e-18 * Math.abs(sum); k++) {
            term *= x * x / (2 * k + 1);
            sum += term;
        }
        return 0.5 + sum * Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
    }
}
