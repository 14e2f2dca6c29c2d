package org.ohmloom.solve;

import java.util.Arrays;

/**
 * How much of the power asked of an island its wiring can bring.
 *
 * <p>All loads that hold their power are raised together, from none to all of it, each step starting from the voltages of
 * the last; a step that finds no balance is halved, down to a hundred-thousandth. Behind one source of Vs and R the end is
 * at Vs^2 / (4 R).
 *
 * <p>At the end the network has a direction u of voltages in which nothing holds it back: what the conductances take up
 * there the loads give, each (watts / volts^2) x u^2 of it. The load with the largest share is named as the cause. u is
 * found by inverse iteration.
 *
 * @param shareFraction share of the power for which there is a balance, 1 when all of it
 * @param volts         voltages at that share, V
 * @param cause         number of the branch with the largest part in it
 */
record PowerLimit(double shareFraction, PreciseRow volts, int cause) {

    private static final double SMALLEST_STEP_RATIO = 1e-5;
    private static final double FIRST_STEP_RATIO = 0.25;
    private static final int INVERSE_ITERATIONS = 12;

    /**
     * Raises the power as far as it goes.
     *
     * @param circuit   the circuit
     * @param regulation its solver
     * @param awake     characteristics, loads that hold their power with their floor
     * @param openVolts voltages when those draw nothing
     */
    static PowerLimit find(Circuit circuit, Regulation regulation, Characteristic[] awake, PreciseRow openVolts) {
        double reached = 0;
        double step = FIRST_STEP_RATIO;
        PreciseRow volts = openVolts;
        while (reached < 1 && step >= SMALLEST_STEP_RATIO) {
            double next = Math.min(1, reached + step);
            Characteristic[] laws = scaled(awake, next);
            Newton.Result result = regulation.settle(laws, volts);
            if (result.end() == Newton.End.BALANCED && !isCollapsed(circuit, laws, result.volts())) {
                reached = next;
                volts = result.volts();
                step *= 1.5;
            } else {
                step /= 2;
            }
        }
        return new PowerLimit(reached, volts, reached < 1 ? cause(circuit, awake, reached, volts) : -1);
    }

    /** Whether a search went through the floor of a load: it found no operating point. */
    static boolean isCollapsed(Circuit circuit, Characteristic[] laws, PreciseRow volts) {
        for (int branch = 0; branch < laws.length; branch++) {
            if (laws[branch] instanceof DrawnPower power
                    && circuit.along(branch, volts).value() <= power.floorVolts()) {
                return true;
            }
        }
        return false;
    }

    /** The same as a finding of the island. */
    Failure failure(Circuit circuit, Characteristic[] awake) {
        return Failure.overloaded(circuit.branches().get(cause), ((DrawnPower) awake[cause]).watts(), shareFraction);
    }

    private static Characteristic[] scaled(Characteristic[] laws, double shareFraction) {
        Characteristic[] scaled = laws.clone();
        Arrays.setAll(scaled, each -> laws[each] instanceof DrawnPower power ? power.share(shareFraction) : laws[each]);
        return scaled;
    }

    private static int cause(Circuit circuit, Characteristic[] laws, double reached, PreciseRow volts) {
        double[] siemens = Balance.quick(circuit, scaled(laws, reached), Leak.FINAL_SIEMENS, volts)
                .siemens();
        double[] soft = new double[volts.length()];
        Arrays.fill(soft, 1);
        if (circuit.mesh().eliminate(siemens)) {
            for (int round = 0; round < INVERSE_ITERATIONS; round++) {
                soft = circuit.mesh().volts(ofUnitSize(soft));
            }
        }
        int cause = -1;
        double largest = Double.NEGATIVE_INFINITY;
        for (int branch = 0; branch < laws.length; branch++) {
            if (laws[branch] instanceof DrawnPower power) {
                double along = circuit.along(branch, volts).value();
                double part = circuit.along(branch, soft) / along;
                double share = power.watts() * part * part;
                if (share > largest) {
                    largest = share;
                    cause = branch;
                }
            }
        }
        return cause;
    }

    private static double[] ofUnitSize(double[] values) {
        double largest = Arrays.stream(values).map(Math::abs).max().orElse(1);
        return Arrays.stream(values).map(value -> value / largest).toArray();
    }
}
