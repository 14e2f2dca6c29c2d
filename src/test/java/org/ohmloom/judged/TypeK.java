package org.ohmloom.judged;

import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The voltage of a type K thermocouple against 0 deg C, written anew for the judge: NIST Monograph 175, ITS-90 (the coefficients
 * from memory).
 */
final class TypeK {

    /** Coefficients of T, T^2 and so on below 0 deg C, mV. */
    private static final List<Double> COLD = List.of(
            3.9450128025e-2,
            2.36223735980e-5,
            -3.28589067840e-7,
            -4.99048287770e-9,
            -6.75090591730e-11,
            -5.74103274280e-13,
            -3.10888728940e-15,
            -1.04516093650e-17,
            -1.98892668780e-20,
            -1.63226974860e-23);

    /** The same from 0 deg C up, beside -1.76004136860e-2 mV and a hump about 126.9686 deg C. */
    private static final List<Double> WARM = List.of(
            3.89212049750e-2,
            1.85587700320e-5,
            -9.94575928740e-8,
            3.18409457190e-10,
            -5.60728448890e-13,
            5.60750590590e-16,
            -3.20207200030e-19,
            9.71511471520e-23,
            -1.21047212750e-26);

    private static final double LEAST_CELSIUS = -200;
    private static final double MOST_CELSIUS = 1372;

    private TypeK() {}

    static double volts(double celsius) {
        double sum = 0;
        double power = 1;
        for (double coefficient : celsius < 0 ? COLD : WARM) {
            power *= celsius;
            sum += coefficient * power;
        }
        return 1e-3
                * (celsius < 0
                        ? sum
                        : sum - 1.7600413686e-2 + 0.1185976 * Math.exp(-1.183432e-4 * Math.pow(celsius - 126.9686, 2)));
    }

    static double celsius(double volts) {
        return new BrentSolver(1e-9, 1e-9).solve(200, celsius -> volts(celsius) - volts, LEAST_CELSIUS, MOST_CELSIUS);
    }
}
