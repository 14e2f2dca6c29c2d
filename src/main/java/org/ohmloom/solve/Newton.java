package org.ohmloom.solve;

import java.util.Arrays;
import java.util.function.BooleanSupplier;

/**
 * Finds the voltages at which the currents of every point balance.
 *
 * <p>Newton's method: at the present voltages V every branch is replaced by its tangent, the linear network is solved by
 * {@link StarMesh} for the step d that would balance the currents F, J d = -F, and V moves by a x d. For branches whose
 * current never falls with the voltage the balance is the minimum of a convex function, the co-content of the network
 * (Millar, Philosophical Magazine 42, 1951), whose slope along the step is F . d; where a whole step would climb out of the
 * valley on the other side, a is sought so that the slope there has at most half its first size. So the method arrives
 * from anywhere, also over the kinks of diodes and current limits.
 *
 * <p>F and V are {@link Precise}, J is not; near the balance each step then gains some 14 digits for straight branches, and
 * the same loop that searches also polishes: it ends one step after the currents balance to 13 digits, so that the small
 * ones among them have their digits too.
 */
final class Newton {

    /** How a search ended. */
    enum End {
        /** The currents balance. */
        BALANCED,
        /** The tangents have no stable solution: loads that hold their power ask too much here. */
        UNSTABLE,
        /** A voltage beyond all bounds: a current has no way to go. */
        ADRIFT,
        /** Too many steps. */
        LOST
    }

    /**
     * The end of a search.
     *
     * @param end   how it ended
     * @param volts voltage of each point, V
     * @param ratio largest imbalance, see {@link Balance#ratio}
     */
    record Result(End end, Precise[] volts, double ratio) {}

    private static final int MOST_STEPS = 300;
    private static final int MOST_CUTS = 60;
    private static final double BALANCED_RATIO = 1e-13;
    private static final double NEARLY_BALANCED_RATIO = 1e-9;
    private static final double CAREFUL_ABOVE_RATIO = 1e-7;
    /** A longer step near the balance may leave the straight piece it was found on: then it is taken with care too. */
    private static final double SURE_STEP_VOLTS = 1e-3;

    private static final double LONGEST_STEP_VOLTS = 1e9;
    private static final double ADRIFT_VOLTS = 1e8;

    private final Circuit circuit;
    private final BooleanSupplier cancelled;

    Newton(Circuit circuit, BooleanSupplier cancelled) {
        this.circuit = circuit;
        this.cancelled = cancelled;
    }

    /** Balances to a thousand-millionth, good enough to start the next stage. */
    Result approach(Characteristic[] laws, double leakSiemens, Precise[] start) {
        return run(laws, leakSiemens, start, NEARLY_BALANCED_RATIO, false);
    }

    /** Balances as far as the numbers allow, with the least leak. */
    Result settle(Characteristic[] laws, Precise[] start) {
        return run(laws, Leak.FINAL_SIEMENS, start, BALANCED_RATIO, true);
    }

    private Result run(Characteristic[] laws, double leak, Precise[] start, double goodRatio, boolean polish) {
        Point at = new Point(start, new Balance(circuit, laws, leak, start));
        double ratio = at.balance().ratio();
        for (int step = 0; step < MOST_STEPS; step++) {
            Cancelled.check(cancelled);
            if (!circuit.mesh().eliminate(at.balance().siemens())) {
                return new Result(End.UNSTABLE, at.volts(), ratio);
            }
            double[] stepVolts = circuit.mesh().volts(at.balance().missingAmps());
            boolean sure = ratio <= CAREFUL_ABOVE_RATIO
                    && Arrays.stream(stepVolts).allMatch(each -> Math.abs(each) <= SURE_STEP_VOLTS);
            at = sure ? moved(laws, leak, at, stepVolts, 1) : careful(laws, leak, at, stepVolts);
            double before = ratio;
            ratio = at.balance().ratio();
            if (ratio <= goodRatio && (!polish || before <= goodRatio)) {
                return new Result(End.BALANCED, at.volts(), ratio);
            }
            if (polish && Arrays.stream(at.volts()).anyMatch(each -> Math.abs(each.value()) > ADRIFT_VOLTS)) {
                return new Result(End.ADRIFT, at.volts(), ratio);
            }
        }
        return new Result(End.LOST, at.volts(), ratio);
    }

    /** Voltages with the currents they cause. */
    private record Point(Precise[] volts, Balance balance) {}

    /** Takes a step: all of it, unless the slope at its end is too steep the other way. */
    private Point careful(Characteristic[] laws, double leak, Point start, double[] stepVolts) {
        double longest = 0;
        for (double each : stepVolts) {
            longest = Math.max(longest, Math.abs(each));
        }
        double slopeLow = start.balance().along(stepVolts);
        double steep = Math.abs(slopeLow) / 2;
        double low = 0;
        double high = Math.min(1, LONGEST_STEP_VOLTS / longest);
        Point end = moved(laws, leak, start, stepVolts, high);
        double slopeHigh = end.balance().along(stepVolts);
        double slope = slopeHigh;
        boolean overshot = slope > steep;
        for (int cut = 1; overshot && Math.abs(slope) > steep && cut <= MOST_CUTS; cut++) {
            double share = cut % 2 == 0 ? 0.5 : slopeLow / (slopeLow - slopeHigh);
            double part = low + share * (high - low);
            end = moved(laws, leak, start, stepVolts, part);
            slope = end.balance().along(stepVolts);
            if (slope > 0) {
                high = part;
                slopeHigh = slope;
            } else {
                low = part;
                slopeLow = slope;
            }
        }
        return end;
    }

    private Point moved(Characteristic[] laws, double leak, Point start, double[] stepVolts, double part) {
        Precise[] volts = new Precise[stepVolts.length];
        for (int point = 0; point < volts.length; point++) {
            volts[point] = start.volts()[point].plus(part * stepVolts[point]);
        }
        return new Point(volts, new Balance(circuit, laws, leak, volts));
    }
}
