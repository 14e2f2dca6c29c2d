package org.ohmloom.solve.charge;

/** Largest mean of a current that is on for a while in every period, over any window of a given length. */
final class WorstMean {

    /** Windows of a load analysis, s; ASTM F2490 from memory. */
    static final double FIVE_SECONDS = 5;

    static final double FIVE_MINUTES = 300;
    static final double HALF_HOUR = 1800;

    private WorstMean() {}

    /**
     * The largest mean, A: the window begins as the current comes on, so it holds whole on-times and the beginning of one more.
     *
     * @param onAmps        current while on, A
     * @param onSeconds     time it stays on, s, at most the period; infinite for all the time
     * @param periodSeconds time from one switching on to the next, s; infinite when it comes on only once
     * @param windowSeconds length of the window, s
     */
    static double amps(double onAmps, double onSeconds, double periodSeconds, double windowSeconds) {
        if (Double.isInfinite(periodSeconds)) {
            return onAmps * Math.min(onSeconds, windowSeconds) / windowSeconds;
        }
        double whole = Math.floor(windowSeconds / periodSeconds);
        double left = windowSeconds - whole * periodSeconds;
        double on = whole * onSeconds + Math.min(onSeconds, left);
        return onAmps * on / windowSeconds;
    }
}
