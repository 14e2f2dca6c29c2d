package org.ohmloom.solve;

/**
 * A number held as the unevaluated sum of two doubles, about 32 significant digits.
 *
 * <p>One microhm that carries one ampere loses a millionth of a volt between two points that stand at twelve: in a
 * double the difference keeps nine digits, here it keeps twenty-five. All voltages of a solution are held like this
 * until they are published, so that a current found from a small difference is right to the last digit of a double.
 *
 * <p>Error-free sum after Knuth, error-free product after Dekker (Numerische Mathematik 18, 1971). Valid for
 * magnitudes from about 1e-280 to 1e290.
 */
final class Precise {

    static final Precise ZERO = new Precise(0, 0);

    /** 2^27 + 1: cuts a double into two halves of 26 bits, whose products are exact. */
    private static final double CUT = 134217729.0;

    private final double high;
    private final double low;

    private Precise(double high, double low) {
        this.high = high;
        this.low = low;
    }

    static Precise of(double value) {
        return new Precise(value, 0);
    }

    /** a + b without rounding. */
    static Precise sum(double a, double b) {
        double sum = a + b;
        double part = sum - a;
        return new Precise(sum, (a - (sum - part)) + (b - part));
    }

    /** a x b without rounding. */
    static Precise product(double a, double b) {
        double product = a * b;
        return new Precise(product, productError(a, b, product));
    }

    /** What rounding took from a product. */
    static double productError(double a, double b, double product) {
        double cutA = CUT * a;
        double aHigh = cutA - (cutA - a);
        double aLow = a - aHigh;
        double cutB = CUT * b;
        double bHigh = cutB - (cutB - b);
        double bLow = b - bHigh;
        return ((aHigh * bHigh - product) + aHigh * bLow + aLow * bHigh) + aLow * bLow;
    }

    /** The number held as two doubles of which the second is what rounding took from the first. */
    static Precise joined(double high, double low) {
        return new Precise(high, low);
    }

    Precise plus(Precise other) {
        Precise highs = sum(high, other.high);
        Precise lows = sum(low, other.low);
        Precise joined = ordered(highs.high, highs.low + lows.high);
        return ordered(joined.high, joined.low + lows.low);
    }

    Precise plus(double other) {
        return plus(of(other));
    }

    Precise minus(Precise other) {
        return plus(other.negated());
    }

    Precise negated() {
        return new Precise(-high, -low);
    }

    Precise times(double factor) {
        Precise product = product(high, factor);
        return ordered(product.high, product.low + low * factor);
    }

    /** The product to the same number of digits; what only the two low parts give is beyond them. */
    Precise times(Precise factor) {
        Precise product = product(high, factor.high);
        return ordered(product.high, product.low + (high * factor.low + low * factor.high));
    }

    /** Long division in three steps, each on the exact remainder of the one before. */
    Precise dividedBy(double divisor) {
        double first = high / divisor;
        Precise rest = minus(product(first, divisor));
        double second = rest.high / divisor;
        rest = rest.minus(product(second, divisor));
        double third = rest.high / divisor;
        return sum(first, second).plus(third);
    }

    /** The nearest double. */
    double value() {
        return high;
    }

    /** What the nearest double leaves. */
    double low() {
        return low;
    }

    /** The sum of two doubles of which the first is not the smaller one. */
    private static Precise ordered(double larger, double smaller) {
        double sum = larger + smaller;
        return new Precise(sum, smaller - (sum - larger));
    }

    @Override
    public String toString() {
        return high + " + " + low;
    }
}
