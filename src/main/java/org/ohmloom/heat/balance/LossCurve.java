package org.ohmloom.heat.balance;

import java.util.Arrays;

/**
 * Heat a wire loses against its conductor temperature, taken once in steps of its surface temperature and then read along
 * straight lines between them: for transients, which ask for it thousands of times.
 */
final class LossCurve {

    private static final int STEPS = 400;
    private final double[] celsius = new double[STEPS + 1];
    private final double[] watts = new double[STEPS + 1];

    /** The losses of a wire up to the melting point of copper at its surface; steps are finer near ambient. */
    LossCurve(HeatBalance balance) {
        Surface surface = balance.surface();
        double inner = balance.innerKelvinMetresPerWatt();
        double ambient = balance.air().ambientCelsius();
        for (int i = 0; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            double outside = ambient + (RoundWire.MELTING_CELSIUS - ambient) * share * share;
            watts[i] = surface.wattsPerMetre(outside, balance.air());
            celsius[i] = outside + watts[i] * inner;
        }
    }

    /** Heat lost at a conductor temperature, W per metre; below ambient as steep as just above it. */
    double wattsPerMetre(double conductorCelsius) {
        int found = Arrays.binarySearch(celsius, conductorCelsius);
        int above = Math.max(1, Math.min(STEPS, found < 0 ? -found - 1 : found));
        double part = (conductorCelsius - celsius[above - 1]) / (celsius[above] - celsius[above - 1]);
        return watts[above - 1] + part * (watts[above] - watts[above - 1]);
    }
}
