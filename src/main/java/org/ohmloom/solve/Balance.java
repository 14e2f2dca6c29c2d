package org.ohmloom.solve;

import java.util.Arrays;

/**
 * The currents of a circuit at given voltages: what each branch carries and what each point is short of.
 *
 * <p>Voltages are {@link Precise} either way. {@link #quick} takes the currents of resistances and their sums as doubles, which
 * miss the balance by some 1e-15 of the largest current at a point: enough to search by. {@link #precise} keeps all digits.
 */
final class Balance {

    private final double[] outAmps;
    private final double[] largestAmps;
    private final double[] siemens;

    private Balance(double[] outAmps, double[] largestAmps, double[] siemens) {
        this.outAmps = outAmps;
        this.largestAmps = largestAmps;
        this.siemens = siemens;
    }

    /**
     * Adds up the currents in doubles.
     *
     * @param circuit     the circuit
     * @param laws        characteristic of each branch
     * @param leakSiemens leak of the stage, S
     * @param volts       voltage of each point, V
     */
    static Balance quick(Circuit circuit, Characteristic[] laws, double leakSiemens, PreciseRow volts) {
        int[] from = circuit.mesh().from();
        int[] to = circuit.mesh().to();
        double[] out = new double[volts.length()];
        double[] largest = new double[volts.length()];
        double[] siemens = new double[laws.length];
        Arrays.fill(largest, 1);
        for (int branch = 0; branch < laws.length; branch++) {
            double amps;
            if (laws[branch] instanceof Ohmic ohmic) {
                siemens[branch] = ohmic.siemens();
                amps = volts.difference(from[branch], to[branch]) * ohmic.siemens();
            } else {
                Precise along = circuit.along(branch, volts);
                double leak = laws[branch].leakSiemens(leakSiemens);
                siemens[branch] = laws[branch].siemens(along) + leak;
                amps = laws[branch].amps(along).value() + along.value() * leak;
            }
            if (from[branch] >= 0) {
                out[from[branch]] += amps;
            }
            if (to[branch] >= 0) {
                out[to[branch]] -= amps;
            }
            largest(largest, from[branch], amps);
            largest(largest, to[branch], amps);
        }
        return new Balance(out, largest, siemens);
    }

    /** Adds up the currents in {@link Precise} numbers; parameters as those of {@link #quick}. */
    static Balance precise(Circuit circuit, Characteristic[] laws, double leakSiemens, PreciseRow volts) {
        int[] from = circuit.mesh().from();
        int[] to = circuit.mesh().to();
        PreciseRow out = circuit.flat();
        double[] largest = new double[volts.length()];
        double[] siemens = new double[laws.length];
        Arrays.fill(largest, 1);
        PreciseRow along = circuit.along(volts);
        PreciseRow amps = new PreciseRow(laws.length);
        for (int branch = 0; branch < laws.length; branch++) {
            laws[branch].amps(along, branch, amps);
            siemens[branch] = laws[branch].siemens(along, branch);
            double leak = laws[branch].leakSiemens(leakSiemens);
            if (leak > 0) {
                amps.addProduct(branch, along, branch, leak);
                siemens[branch] += leak;
            }
            out.add(from[branch], amps, branch);
            out.subtract(to[branch], amps, branch);
            largest(largest, from[branch], amps.value(branch));
            largest(largest, to[branch], amps.value(branch));
        }
        return new Balance(out.values(), largest, siemens);
    }

    private static void largest(double[] largestAmps, int point, double amps) {
        if (point >= 0) {
            largestAmps[point] = Math.max(largestAmps[point], Math.abs(amps));
        }
    }

    /** Slope of each branch, S. */
    double[] siemens() {
        return siemens;
    }

    /** Current that has to be fed into each point to balance it, A. */
    double[] missingAmps() {
        double[] missing = outAmps.clone();
        for (int point = 0; point < missing.length; point++) {
            missing[point] = -missing[point];
        }
        return missing;
    }

    /** Largest imbalance of a point over the largest current there, the latter taken as at least 1 A. */
    double ratio() {
        double worst = 0;
        for (int point = 0; point < outAmps.length; point++) {
            worst = Math.max(worst, Math.abs(outAmps[point]) / largestAmps[point]);
        }
        return worst;
    }

    /** Imbalance times step, summed: how the co-content of the circuit changes along a step, W. */
    double along(double[] stepVolts) {
        double watts = 0;
        for (int point = 0; point < outAmps.length; point++) {
            watts += outAmps[point] * stepVolts[point];
        }
        return watts;
    }

    /** The point with the largest imbalance. */
    int worstPoint() {
        int worst = 0;
        for (int point = 0; point < outAmps.length; point++) {
            if (Math.abs(outAmps[point]) / largestAmps[point] > Math.abs(outAmps[worst]) / largestAmps[worst]) {
                worst = point;
            }
        }
        return worst;
    }
}
