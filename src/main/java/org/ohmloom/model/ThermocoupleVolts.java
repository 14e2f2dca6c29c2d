package org.ohmloom.model;

import java.util.List;

/**
 * Voltage of a type K thermocouple by the polynomials of ITS-90, its reference junction at 0 deg C.
 *
 * <p>E(T) = sum of c_i T^i in mV, above 0 deg C plus a0 exp(a1 (T - a2)^2). Source: NIST Monograph 175 and NIST SRD 60; the
 * coefficients at full precision are from memory, their leading digits agree with the published ones. Never add temperatures:
 * a measured voltage and that of the cold junction add up, and the sum is turned into a temperature.
 */
public final class ThermocoupleVolts {

    /** Range of the polynomials, deg C. */
    public static final double LOWEST_CELSIUS = -270, HIGHEST_CELSIUS = 1372;

    private static final List<Double> BELOW = List.of(
            0.0,
            3.945012802500e-2,
            2.362237359800e-5,
            -3.285890678400e-7,
            -4.990482877700e-9,
            -6.750905917300e-11,
            -5.741032742800e-13,
            -3.108887289400e-15,
            -1.045160936500e-17,
            -1.988926687800e-20,
            -1.632269748600e-23);

    private static final List<Double> ABOVE = List.of(
            -1.760041368600e-2,
            3.892120497500e-2,
            1.855877003200e-5,
            -9.945759287400e-8,
            3.184094571900e-10,
            -5.607284488900e-13,
            5.607505905900e-16,
            -3.202072000300e-19,
            9.715114715200e-23,
            -1.210472127500e-26);

    private static final double HUMP_MILLIVOLTS = 0.1185976;
    private static final double HUMP_WIDTH = -1.183432e-4;
    private static final double HUMP_CELSIUS = 126.9686;

    /** Halvings that settle a temperature to the last digit. */
    private static final int HALVINGS = 60;

    private ThermocoupleVolts() {}

    /** Voltage at a temperature, V; beyond the range that of its end. */
    public static double volts(double celsius) {
        double held = Math.max(LOWEST_CELSIUS, Math.min(HIGHEST_CELSIUS, celsius));
        List<Double> coefficients = held < 0 ? BELOW : ABOVE;
        double millivolts = 0;
        for (int power = coefficients.size() - 1; power >= 0; power--) {
            millivolts = millivolts * held + coefficients.get(power);
        }
        if (held >= 0) {
            double away = held - HUMP_CELSIUS;
            millivolts += HUMP_MILLIVOLTS * Math.exp(HUMP_WIDTH * away * away);
        }
        return millivolts / 1000;
    }

    /** Temperature at a voltage, deg C; beyond the range its end. By halving, as E(T) only rises. */
    public static double celsius(double volts) {
        double low = LOWEST_CELSIUS;
        double high = HIGHEST_CELSIUS;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            if (volts(middle) < volts) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
