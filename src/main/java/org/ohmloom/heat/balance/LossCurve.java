package org.ohmloom.heat.balance;

import java.util.Arrays;

/**
 * Heat a wire loses against its conductor temperature, taken in steps of its surface temperature, each when it is first asked
 * for, and read along straight lines between them: for transients, which ask for it thousands of times. For one thread.
 */
final class LossCurve {

    private static final int STEPS = 400;
    private final HeatBalance balance;
    private final Surface surface;
    private final double[] celsius = new double[STEPS + 1];
    private final double[] watts = new double[STEPS + 1];

    /** The losses of a wire up to the melting point of copper at its surface; steps are finer near ambient. */
    LossCurve(HeatBalance balance) {
        this.balance = balance;
        surface = balance.surface();
        Arrays.fill(celsius, Double.NaN);
    }

    /** Heat lost at a conductor temperature, W per metre; below ambient as steep as just above it. */
    double wattsPerMetre(double conductorCelsius) {
        int below = 0;
        int above = STEPS;
        while (above - below > 1) {
            int middle = (below + above) >>> 1;
            if (celsius(middle) < conductorCelsius) {
                below = middle;
            } else {
                above = middle;
            }
        }
        double low = celsius(below);
        double part = (conductorCelsius - low) / (celsius(above) - low);
        return watts[below] + part * (watts[above] - watts[below]);
    }

    /** Conductor temperature at a step, deg C; takes its losses down. */
    private double celsius(int step) {
        if (Double.isNaN(celsius[step])) {
            double ambient = balance.air().ambientCelsius();
            double share = (double) step / STEPS;
            double outside = ambient + (RoundWire.MELTING_CELSIUS - ambient) * share * share;
            watts[step] = surface.wattsPerMetre(outside, balance.air());
            celsius[step] = outside + watts[step] * balance.innerKelvinMetresPerWatt();
        }
        return celsius[step];
    }
}
