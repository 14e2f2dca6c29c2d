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
 * <p>V is {@link Precise}, J is not; near the balance each step gains some 14 digits for straight branches. The search goes
 * by currents in doubles; near the balance F is precise too, and the search ends one step after the currents balance to 13
 * digits, so that the small ones among them have their digits too.
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
    record Result(End end, PreciseRow volts, double ratio) {}

    private static final int MOST_STEPS = 300;
    private static final int MOST_CUTS = 60;
    private static final double BALANCED_RATIO = 1e-13;
    private static final double NEARLY_BALANCED_RATIO = 1e-9;

    /** Good enough for a search that repeats the solution: the step that follows brings it near to the last digit of a double. */
    private static final double ROUGHLY_BALANCED_RATIO = 1e-12;

    private static final double CAREFUL_ABOVE_RATIO = 1e-7;
    /** A longer step near the balance may leave the straight piece it was found on: then it is taken with care too. */
    private static final double SURE_STEP_VOLTS = 1e-3;

    private static final double LONGEST_STEP_VOLTS = 1e9;
    private static final double ADRIFT_VOLTS = 1e8;

    private final Circuit circuit;
    private final BooleanSupplier cancelled;
    private boolean rough;

    Newton(Circuit circuit, BooleanSupplier cancelled) {
        this.circuit = circuit;
        this.cancelled = cancelled;
    }

    /** Balances to a thousand-millionth, good enough to start the next stage. */
    Result approach(Characteristic[] laws, double leakSiemens, PreciseRow start) {
        return run(laws, leakSiemens, start, NEARLY_BALANCED_RATIO, false, false);
    }

    /** Balances as far as the numbers allow, with the least leak; in doubles while it is asked to be rough. */
    Result settle(Characteristic[] laws, PreciseRow start) {
        return rough
                ? run(laws, Leak.FINAL_SIEMENS, start, ROUGHLY_BALANCED_RATIO, false, true)
                : run(laws, Leak.FINAL_SIEMENS, start, BALANCED_RATIO, true, true);
    }

    /** Settles from now on in doubles only, or to the last digit again. */
    void roughly(boolean rough) {
        this.rough = rough;
    }

    private Result run(
            Characteristic[] laws, double leak, PreciseRow start, double goodRatio, boolean polish, boolean settles) {
        Point at = new Point(start, Balance.quick(circuit, laws, leak, start));
        double ratio = at.balance().ratio();
        boolean polishing = false;
        for (int step = 0; step < MOST_STEPS; step++) {
            Cancelled.check(cancelled);
            if (polish && !polishing && ratio <= NEARLY_BALANCED_RATIO) {
                polishing = true;
                at = new Point(at.volts(), Balance.precise(circuit, laws, leak, at.volts()));
                ratio = at.balance().ratio();
            }
            if (!circuit.mesh().eliminate(at.balance().siemens())) {
                return new Result(End.UNSTABLE, at.volts(), ratio);
            }
            double[] stepVolts = circuit.mesh().volts(at.balance().missingAmps());
            boolean last = polishing && ratio <= goodRatio;
            Line line = new Line(laws, leak, at, stepVolts, polishing && !last);
            Point balanced = at;
            double balancedRatio = ratio;
            boolean sure = ratio <= CAREFUL_ABOVE_RATIO && areWithin(stepVolts, SURE_STEP_VOLTS);
            at = sure ? line.at(1) : careful(line);
            ratio = at.balance().ratio();
            if (ratio <= goodRatio && (!polish || last)) {
                return new Result(End.BALANCED, at.volts(), ratio);
            }
            if (last) {
                // the last step would only have added digits: where rounding leads it away, it is not taken
                return new Result(End.BALANCED, balanced.volts(), balancedRatio);
            }
            if (settles && at.volts().isBeyond(ADRIFT_VOLTS)) {
                return new Result(End.ADRIFT, at.volts(), ratio);
            }
        }
        return new Result(End.LOST, at.volts(), ratio);
    }

    private static boolean areWithin(double[] values, double limit) {
        for (double value : values) {
            if (!(Math.abs(value) <= limit)) {
                return false;
            }
        }
        return true;
    }

    /** Voltages with the currents they cause. */
    private record Point(PreciseRow volts, Balance balance) {}

    /**
     * The way a step leads. How the co-content changes along it is known for straight branches from their tangents, so a place on
     * the way costs no more than the branches that bend.
     */
    private final class Line {
        private final Characteristic[] laws;
        private final double leak;
        private final Point start;
        private final double[] stepVolts;
        private final boolean precise;
        private final double slopeWatts;
        private final double straightWatts;
        private final int[] bent;
        private final double[] bentAmps;

        Line(Characteristic[] laws, double leak, Point start, double[] stepVolts, boolean precise) {
            this.laws = laws;
            this.leak = leak;
            this.start = start;
            this.stepVolts = stepVolts;
            this.precise = precise;
            slopeWatts = start.balance().along(stepVolts);
            int[] bent = new int[laws.length];
            double[] bentAmps = new double[laws.length];
            int count = 0;
            double straight = 0;
            for (int branch = 0; branch < laws.length; branch++) {
                double along = circuit.along(branch, stepVolts);
                if (laws[branch].isLinear()) {
                    straight += start.balance().siemens()[branch] * along * along;
                } else if (along != 0) {
                    straight += laws[branch].leakSiemens(leak) * along * along;
                    bentAmps[count] = laws[branch]
                            .amps(circuit.along(branch, start.volts()))
                            .value();
                    bent[count++] = branch;
                }
            }
            straightWatts = straight;
            this.bent = Arrays.copyOf(bent, count);
            this.bentAmps = bentAmps;
        }

        Point at(double part) {
            PreciseRow volts = start.volts().plus(part, stepVolts);
            return new Point(
                    volts,
                    precise ? Balance.precise(circuit, laws, leak, volts) : Balance.quick(circuit, laws, leak, volts));
        }

        double longestVolts() {
            double longest = 0;
            for (double each : stepVolts) {
                longest = Math.max(longest, Math.abs(each));
            }
            return longest;
        }

        /** How the co-content changes along the step at a part of it, W. */
        double slope(double part) {
            double slope = slopeWatts + part * straightWatts;
            for (int each = 0; each < bent.length; each++) {
                double along = circuit.along(bent[each], stepVolts);
                slope += (laws[bent[each]].amps(volts(bent[each], part, along)).value() - bentAmps[each]) * along;
            }
            return slope;
        }

        /** How that slope changes along the step at a part of it, W. */
        double bend(double part) {
            double bend = straightWatts;
            for (int branch : bent) {
                double along = circuit.along(branch, stepVolts);
                bend += laws[branch].siemens(volts(branch, part, along)) * along * along;
            }
            return bend;
        }

        private Precise volts(int branch, double part, double along) {
            return circuit.along(branch, start.volts()).plus(part * along);
        }
    }

    /**
     * Takes a step: all of it, unless the slope at its end is too steep the other way. Then a place between is sought: where
     * the tangent of the slope at the upper end meets zero, exactly right when only one kink lies between, or else at the lower
     * end; half way where those lead out of the piece that is left.
     */
    private static Point careful(Line line) {
        double low = 0;
        double high = Math.min(1, LONGEST_STEP_VOLTS / line.longestVolts());
        double end = high;
        double slopeLow = line.slopeWatts;
        double slopeHigh = line.slope(high);
        double steep = Math.abs(slopeLow) / 2;
        double slope = slopeHigh;
        if (slope > steep) {
            double bendLow = line.bend(low);
            double bendHigh = line.bend(high);
            for (int cut = 1; Math.abs(slope) > steep && cut <= MOST_CUTS; cut++) {
                end = cut % 3 == 1 ? high - slopeHigh / bendHigh : low - slopeLow / bendLow;
                if (cut % 3 == 0 || !(end > low && end < high)) {
                    end = low + (high - low) / 2;
                }
                slope = line.slope(end);
                if (slope > 0) {
                    high = end;
                    slopeHigh = slope;
                    bendHigh = line.bend(end);
                } else {
                    low = end;
                    slopeLow = slope;
                    bendLow = line.bend(end);
                }
            }
        }
        return line.at(end);
    }
}
