package org.ohmloom.heat.balance;

import java.util.function.DoubleUnaryOperator;

/**
 * Heat a conductor loses against its temperature, taken once in steps and then read by straight lines between them: for
 * transients, which ask for it thousands of times.
 */
final class LossCurve {

    private static final int STEPS = 1000;
    private final double ambientCelsius;
    private final double highestCelsius;
    private final double[] watts = new double[STEPS + 1];

    LossCurve(double ambientCelsius, double highestCelsius, DoubleUnaryOperator wattsPerMetre) {
        this.ambientCelsius = ambientCelsius;
        this.highestCelsius = highestCelsius;
        for (int i = 1; i <= STEPS; i++) {
            watts[i] = wattsPerMetre.applyAsDouble(celsius(i));
        }
    }

    /** Temperature of a step; steps are finer near ambient. */
    private double celsius(double step) {
        double share = step / STEPS;
        return ambientCelsius + (highestCelsius - ambientCelsius) * share * share;
    }

    /** Heat lost at a conductor temperature, W per metre; none below ambient, beyond the end as at the end. */
    double wattsPerMetre(double celsius) {
        double share = (celsius - ambientCelsius) / (highestCelsius - ambientCelsius);
        if (share <= 0) {
            return share * (highestCelsius - ambientCelsius) * watts[1] / (celsius(1) - ambientCelsius);
        }
        double place = Math.min(STEPS, Math.sqrt(share) * STEPS);
        int step = Math.min(STEPS - 1, (int) place);
        double low = celsius(step);
        double part = Math.min(1, (celsius - low) / (celsius(step + 1) - low));
        return watts[step] + part * (watts[step + 1] - watts[step]);
    }
}
