package org.ohmloom.solve;

import java.util.List;

/** Mean of a quantity over all of time, and over each stretch of each clock. */
final class ClockReading {

    private final double[][] weights;
    private final double[][] sums;
    private double weight;
    private double sum;
    private double largest;

    ClockReading(List<Clock> clocks) {
        weights = new double[clocks.size()][];
        sums = new double[clocks.size()][];
        for (int clock = 0; clock < weights.length; clock++) {
            weights[clock] = new double[clocks.get(clock).stretches().size()];
            sums[clock] = new double[weights[clock].length];
        }
    }

    /** Takes down a value in a moment that stands for a share of time. */
    void add(List<Part> at, double share, double value) {
        weight += share;
        sum += share * value;
        largest = Math.max(largest, Math.abs(value));
        for (int clock = 0; clock < weights.length; clock++) {
            weights[clock][at.get(clock).stretch()] += share;
            sums[clock][at.get(clock).stretch()] += share * value;
        }
    }

    /** Mean over all of time. */
    double mean() {
        return weight > 0 ? sum / weight : 0;
    }

    /** Largest size. */
    double largest() {
        return largest;
    }

    /** Mean over a stretch; that of all of time where the stretch was never met. */
    double mean(int clock, int stretch) {
        return weights[clock][stretch] > 0 ? sums[clock][stretch] / weights[clock][stretch] : mean();
    }

    /** Means over the stretches of a clock, less the mean of all of time. */
    double[] deviations(int clock) {
        double[] deviations = new double[weights[clock].length];
        for (int stretch = 0; stretch < deviations.length; stretch++) {
            deviations[stretch] = mean(clock, stretch) - mean();
        }
        return deviations;
    }

    /** Largest less smallest mean over the stretches of a clock. */
    double range(int clock) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int stretch = 0; stretch < weights[clock].length; stretch++) {
            low = Math.min(low, mean(clock, stretch));
            high = Math.max(high, mean(clock, stretch));
        }
        return high - low;
    }
}
