package org.ohmloom.solve;

import java.util.Arrays;

/** The currents of a circuit at given voltages: what each branch carries and what each point is short of. */
final class Balance {

    private final Precise[] outAmps;
    private final double[] largestAmps;
    private final double[] siemens;

    /**
     * Adds up the currents.
     *
     * @param circuit     the circuit
     * @param laws        characteristic of each branch
     * @param leakSiemens leak of the stage, S
     * @param volts       voltage of each point, V
     */
    Balance(Circuit circuit, Characteristic[] laws, double leakSiemens, Precise[] volts) {
        outAmps = circuit.flat();
        largestAmps = new double[outAmps.length];
        siemens = new double[laws.length];
        Arrays.fill(largestAmps, 1);
        for (int branch = 0; branch < laws.length; branch++) {
            Precise along = circuit.along(branch, volts);
            Precise amps = laws[branch].amps(along);
            siemens[branch] = laws[branch].siemens(along);
            double leak = laws[branch].leakSiemens(leakSiemens);
            if (leak > 0) {
                amps = amps.plus(along.times(leak));
                siemens[branch] += leak;
            }
            add(circuit.mesh().from()[branch], amps);
            add(circuit.mesh().to()[branch], amps.negated());
        }
    }

    private void add(int point, Precise amps) {
        if (point >= 0) {
            outAmps[point] = outAmps[point].plus(amps);
            largestAmps[point] = Math.max(largestAmps[point], Math.abs(amps.value()));
        }
    }

    /** Slope of each branch, S. */
    double[] siemens() {
        return siemens;
    }

    /** Current that has to be fed into each point to balance it, A. */
    double[] missingAmps() {
        return Arrays.stream(outAmps)
                .mapToDouble(Precise::value)
                .map(amps -> -amps)
                .toArray();
    }

    /** Largest imbalance of a point over the largest current there, the latter taken as at least 1 A. */
    double ratio() {
        double worst = 0;
        for (int point = 0; point < outAmps.length; point++) {
            worst = Math.max(worst, Math.abs(outAmps[point].value()) / largestAmps[point]);
        }
        return worst;
    }

    /** Imbalance times step, summed: how the co-content of the circuit changes along a step, W. */
    double along(double[] stepVolts) {
        double watts = 0;
        for (int point = 0; point < outAmps.length; point++) {
            watts += outAmps[point].value() * stepVolts[point];
        }
        return watts;
    }

    /** The point with the largest imbalance. */
    int worstPoint() {
        int worst = 0;
        for (int point = 0; point < outAmps.length; point++) {
            if (Math.abs(outAmps[point].value()) / largestAmps[point]
                    > Math.abs(outAmps[worst].value()) / largestAmps[worst]) {
                worst = point;
            }
        }
        return worst;
    }
}
