package org.ohmloom.heat.balance;

import java.util.function.DoubleUnaryOperator;

/** Finds the temperature at which an increasing function of it passes through zero. */
final class Rise {

    /** How near the temperature is found, K. */
    static final double TOLERANCE_KELVIN = 1e-6;

    private static final double FIRST_STEP_KELVIN = 16;
    private static final int MOST_STEPS = 200;

    private Rise() {}

    /** The temperature from {@code lowCelsius} up where the function, negative or zero there, becomes zero. */
    static double where(double lowCelsius, DoubleUnaryOperator increasing) {
        double low = lowCelsius;
        double below = increasing.applyAsDouble(low);
        if (below >= 0) {
            return low;
        }
        double step = FIRST_STEP_KELVIN;
        double high = low + step;
        double above = increasing.applyAsDouble(high);
        while (above < 0) {
            low = high;
            below = above;
            step *= 2;
            high += step;
            above = increasing.applyAsDouble(high);
        }
        return between(low, below, high, above, increasing);
    }

    /** The temperature between two where the function becomes zero: false position, a stuck end's value halved. */
    static double between(double low, double below, double high, double above, DoubleUnaryOperator increasing) {
        double lower = low;
        double upper = high;
        double lowerValue = below;
        double upperValue = above;
        double before = Double.NaN;
        int side = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double middle = (lower * upperValue - upper * lowerValue) / (upperValue - lowerValue);
            double value = increasing.applyAsDouble(middle);
            if (value == 0 || Math.abs(middle - before) < TOLERANCE_KELVIN) {
                return middle;
            }
            before = middle;
            if (value < 0) {
                lower = middle;
                lowerValue = value;
                upperValue = side < 0 ? upperValue / 2 : upperValue;
                side = -1;
            } else {
                upper = middle;
                upperValue = value;
                lowerValue = side > 0 ? lowerValue / 2 : lowerValue;
                side = 1;
            }
        }
        return (lower + upper) / 2;
    }
}
