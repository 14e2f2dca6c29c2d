package org.ohmloom.solve;

/**
 * Many {@link Precise} numbers in a row, to the same digits, kept in two arrays: nothing is created for each sum. Index -1
 * stands for a datum, whose number is 0 and which takes no additions.
 */
final class PreciseRow {

    private final double[] high;
    private final double[] low;

    private PreciseRow(double[] high, double[] low) {
        this.high = high;
        this.low = low;
    }

    /** So many zeros. */
    PreciseRow(int length) {
        this(new double[length], new double[length]);
    }

    int length() {
        return high.length;
    }

    Precise get(int at) {
        return at < 0 ? Precise.ZERO : Precise.joined(high[at], low[at]);
    }

    /** The nearest double. */
    double value(int at) {
        return at < 0 ? 0 : high[at];
    }

    /** The nearest doubles. */
    double[] values() {
        return high.clone();
    }

    /** Whether the size of any of them is over a limit. */
    boolean isBeyond(double limit) {
        for (double value : high) {
            if (Math.abs(value) > limit) {
                return true;
            }
        }
        return false;
    }

    void set(int at, Precise number) {
        high[at] = number.value();
        low[at] = number.low();
    }

    void set(int at, double value) {
        high[at] = value;
        low[at] = 0;
    }

    void set(int at, PreciseRow other, int from) {
        high[at] = other.high[from];
        low[at] = other.low[from];
    }

    /** Difference of two of them as a double, right to its last digit but one. */
    double difference(int from, int to) {
        double fromHigh = from < 0 ? 0 : high[from];
        double fromLow = from < 0 ? 0 : low[from];
        double toHigh = to < 0 ? 0 : high[to];
        double toLow = to < 0 ? 0 : low[to];
        return (fromHigh - toHigh) + (fromLow - toLow);
    }

    /** Sets one to the difference of two of another row, either of which may be the datum. */
    void setDifference(int at, PreciseRow of, int from, int to) {
        double fromHigh = from < 0 ? 0 : of.high[from];
        double fromLow = from < 0 ? 0 : of.low[from];
        double toHigh = to < 0 ? 0 : of.high[to];
        double toLow = to < 0 ? 0 : of.low[to];
        setSum(at, fromHigh, fromLow, -toHigh, -toLow);
    }

    /** Sets one to one of another row times a factor, see {@link Precise#times(Precise)}. */
    void setProduct(int at, PreciseRow of, int from, Precise factor) {
        double a = of.high[from];
        double b = factor.value();
        double product = a * b;
        double smaller = Precise.productError(a, b, product) + (a * factor.low() + of.low[from] * b);
        double sum = product + smaller;
        high[at] = sum;
        low[at] = smaller - (sum - product);
    }

    /** Adds one of another row; nothing to the datum. */
    void add(int at, PreciseRow other, int from) {
        if (at >= 0) {
            setSum(at, high[at], low[at], other.high[from], other.low[from]);
        }
    }

    /** Takes one of another row away; nothing from the datum. */
    void subtract(int at, PreciseRow other, int from) {
        if (at >= 0) {
            setSum(at, high[at], low[at], -other.high[from], -other.low[from]);
        }
    }

    /** Adds one of another row times a factor, see {@link Precise#times(double)}. */
    void addProduct(int at, PreciseRow other, int from, double factor) {
        double a = other.high[from];
        double product = a * factor;
        double smaller = Precise.productError(a, factor, product) + other.low[from] * factor;
        double sum = product + smaller;
        setSum(at, high[at], low[at], sum, smaller - (sum - product));
    }

    /** This row with a part of a step added to each. */
    PreciseRow plus(double part, double[] step) {
        PreciseRow moved = new PreciseRow(high.length);
        for (int at = 0; at < high.length; at++) {
            moved.setSum(at, high[at], low[at], part * step[at], 0);
        }
        return moved;
    }

    /** The sum of two numbers as {@link Precise#plus(Precise)} forms it. */
    private void setSum(int at, double aHigh, double aLow, double bHigh, double bLow) {
        double highs = aHigh + bHigh;
        double part = highs - aHigh;
        double highsError = (aHigh - (highs - part)) + (bHigh - part);
        double lows = aLow + bLow;
        part = lows - aLow;
        double lowsError = (aLow - (lows - part)) + (bLow - part);
        double smaller = highsError + lows;
        double joined = highs + smaller;
        double rest = (smaller - (joined - highs)) + lowsError;
        double sum = joined + rest;
        high[at] = sum;
        low[at] = rest - (sum - joined);
    }
}
