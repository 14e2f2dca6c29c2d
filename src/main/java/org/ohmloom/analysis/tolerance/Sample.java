package org.ohmloom.analysis.tolerance;

import java.util.Arrays;

/** The values of a result in the runs that have one, in rising order; at least two. */
final class Sample {

    /** Below this share of itself a result does not vary: what the solution leaves open, with temperatures to 0.01 K. */
    private static final double STILL_RATIO = 1e-4;

    private static final double PERCENT = 100;

    private final double[] rising;

    Sample(double[] values) {
        rising = values.clone();
        Arrays.sort(rising);
    }

    double least() {
        return rising[0];
    }

    double most() {
        return rising[rising.length - 1];
    }

    double mean() {
        return mean(rising);
    }

    double deviation() {
        return Math.sqrt(variance(rising));
    }

    /** Whether it varies by more than the solution leaves open. */
    boolean varies() {
        return most() - least() > STILL_RATIO * Math.max(Math.abs(least()), Math.abs(most()));
    }

    /** The value a percentage of all lie below, in a straight line between neighbours: Hyndman and Fan 1996, definition 7. */
    double percentile(double percent) {
        double place = percent / PERCENT * (rising.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, rising.length - 1);
        return rising[below] + (place - below) * (rising[above] - rising[below]);
    }

    static double mean(double[] values) {
        return Arrays.stream(values).sum() / values.length;
    }

    static double variance(double[] values) {
        double mean = mean(values);
        double sum = 0;
        for (double each : values) {
            sum += (each - mean) * (each - mean);
        }
        return sum / (values.length - 1);
    }
}
