package org.ohmloom.analysis.tolerance;

import static org.ohmloom.units.Require.within;

/**
 * How often a limit was not kept, and how often it may be at most: the one-sided 95 % bound of Clopper and Pearson, Biometrika
 * 26 (1934) 404-413. Runs without a solution count as not keeping it.
 *
 * @param beyondCount  runs that do not keep it
 * @param runCount     all runs, 1 or more
 * @param upToFraction the bound
 */
public record Chance(int beyondCount, int runCount, double upToFraction) {

    /** Confidence of the bound. */
    public static final double CONFIDENCE = 0.95;

    private static final int HALVINGS = 60;

    public Chance {
        within(beyondCount, 0, runCount, "count of runs beyond a limit");
    }

    /** The chance that so many of so many runs speak for. */
    static Chance of(int beyondCount, int runCount) {
        double low = (double) beyondCount / runCount;
        double high = 1;
        for (int k = 0; k < HALVINGS && beyondCount < runCount; k++) {
            double middle = (low + high) / 2;
            if (atMost(beyondCount, runCount, middle) > 1 - CONFIDENCE) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new Chance(beyondCount, runCount, high);
    }

    /** The share of runs that did not keep it. */
    public double fraction() {
        return (double) beyondCount / runCount;
    }

    /** How likely at most so many of so many runs are, each with a chance. */
    private static double atMost(int most, int runs, double chance) {
        double sum = 0;
        double logTerm = runs * Math.log1p(-chance);
        for (int k = 0; k <= most; k++) {
            sum += Math.exp(logTerm);
            logTerm += Math.log((runs - k) / (k + 1.0)) + Math.log(chance) - Math.log1p(-chance);
        }
        return sum;
    }
}
