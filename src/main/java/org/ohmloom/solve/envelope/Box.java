package org.ohmloom.solve.envelope;

import java.util.Arrays;

/**
 * Between which limits the current of each taker lies, in every combination that agrees with what is decided.
 *
 * <p>The voltage of a taker is its open voltage less transfer resistance times current of every taker that runs. From limits
 * of the currents follow limits of the voltages, from these new limits of the currents, and so on: a current that rises
 * with the voltage is largest at the highest voltage, a held power takes most at the lowest. Limits of the constant
 * currents and of the rising ones hold from the start (at most what the open voltage drives). For held powers the search
 * begins with the currents at open voltage and raises them until no limit moves any more: with transfer resistances
 * that are not negative the voltages fall in every step, so what it ends at is above the stable operating point, which is
 * the least current that satisfies all laws (least fixed point of a rising map; Tarski, Pacific Journal of Mathematics 5,
 * 1955). Where a voltage falls below {@link #LEAST_RATIO} of the open one the limits do not hold; held powers then count
 * with what they take at {@link #ROUGH_RATIO} of it, good enough to find candidates.
 */
final class Box {
    /** Share of the open voltage below which the limits are taken to run away. */
    static final double LEAST_RATIO = 0.25;

    /** Share of the open voltage at which held powers are taken where no limit holds. */
    static final double ROUGH_RATIO = 0.8;

    private static final int MOST_RAISES = 400;
    private static final int MOST_TIGHTENINGS = 4;
    private static final int MOST_SETTLINGS = 200;
    private static final double SETTLED_RATIO = 1e-13;

    private final LinearModel model;
    private final LinearModel lowest;
    private final int[] blockOf;
    private final double[] low;
    private final double[] high;
    private boolean holds = true;

    private Box(LinearModel model, LinearModel lowest, int[] blockOf, double[] low, double[] high) {
        this.model = model;
        this.lowest = lowest;
        this.blockOf = blockOf;
        this.low = low;
        this.high = high;
    }

    /**
     * The limits for every combination; whether they hold, {@link #holds} tells.
     *
     * @param model   the model
     * @param lowest  a model with voltages that are never higher, for the lower limits of voltages
     * @param blockOf block of each taker
     */
    static Box of(LinearModel model, LinearModel lowest, int[] blockOf) {
        int count = blockOf.length;
        Box box = new Box(model, lowest, blockOf, new double[count], new double[count]);
        for (int taker = 0; taker < count; taker++) {
            TakenCurrent current = model.takers().get(taker).current();
            double openVolts = model.openVolts()[taker];
            if (current.kind() == TakenCurrent.Kind.CONSTANT) {
                box.low[taker] = current.amps(openVolts);
                box.high[taker] = box.low[taker];
            } else {
                double most = box.volts(taker, Fixing.NONE, true);
                box.high[taker] = current.amps(most);
            }
        }
        if (!box.raised()) {
            box.rough();
            return box;
        }
        return box.tightened(Fixing.NONE, MOST_TIGHTENINGS);
    }

    private void rough() {
        holds = false;
        for (int taker = 0; taker < high.length; taker++) {
            TakenCurrent current = model.takers().get(taker).current();
            if (current.kind() == TakenCurrent.Kind.POWER) {
                high[taker] = current.amps(ROUGH_RATIO * Math.max(1, model.openVolts()[taker]));
            }
        }
    }

    /** Whether no combination exceeds the limits. */
    boolean holds() {
        return holds;
    }

    private boolean raised() {
        for (int round = 0; round < MOST_RAISES; round++) {
            boolean moved = false;
            double[] next = high.clone();
            for (int taker = 0; taker < next.length; taker++) {
                TakenCurrent current = model.takers().get(taker).current();
                if (current.kind() == TakenCurrent.Kind.POWER) {
                    double volts = volts(taker, Fixing.NONE, false);
                    if (volts < LEAST_RATIO * Math.abs(model.openVolts()[taker]) || volts <= 0) {
                        return false;
                    }
                    next[taker] = Math.max(high[taker], current.amps(volts));
                    moved |= next[taker] > high[taker] * (1 + SETTLED_RATIO);
                }
            }
            System.arraycopy(next, 0, high, 0, high.length);
            if (!moved) {
                for (int taker = 0; taker < next.length; taker++) {
                    high[taker] += Math.abs(high[taker]) * 1e-11;
                }
                return true;
            }
        }
        return false;
    }

    /** The highest or lowest voltage of a taker while it runs, V. */
    private double volts(int taker, Fixing at, boolean highest) {
        LinearModel by = highest ? model : lowest;
        double volts = by.openVolts()[taker];
        double[] ohms = by.transferOhms()[taker];
        for (int other = 0; other < ohms.length; other++) {
            boolean own = blockOf[other] == blockOf[taker];
            if (ohms[other] == 0 || !own && at.isOff(blockOf[other])) {
                continue;
            }
            double one = ohms[other] * low[other];
            double two = ohms[other] * high[other];
            double taken = highest ? Math.min(one, two) : Math.max(one, two);
            if (!own && !at.isOn(blockOf[other])) {
                taken = highest ? Math.min(0, taken) : Math.max(0, taken);
            }
            volts -= taken;
        }
        return volts;
    }

    /** Tighter limits for what is decided. */
    Box tightened(Fixing at) {
        return tightened(at, MOST_TIGHTENINGS);
    }

    private Box tightened(Fixing at, int rounds) {
        Box box = new Box(model, lowest, blockOf, low.clone(), high.clone());
        for (int round = 0; round < rounds; round++) {
            if (!box.tighten(at)) {
                break;
            }
        }
        return box;
    }

    /** One round; false when nothing moved. */
    private boolean tighten(Fixing at) {
        boolean moved = false;
        for (int taker = 0; taker < low.length; taker++) {
            TakenCurrent current = model.takers().get(taker).current();
            if (current.kind() == TakenCurrent.Kind.CONSTANT || at.isOff(blockOf[taker])) {
                continue;
            }
            double fromLow = current.amps(volts(taker, at, false));
            double fromHigh = current.amps(volts(taker, at, true));
            double least = Math.max(low[taker], Math.min(fromLow, fromHigh));
            double most = Math.min(high[taker], Math.max(fromLow, fromHigh));
            if (least <= most) {
                moved |= least > low[taker] || most < high[taker];
                low[taker] = least;
                high[taker] = most;
            }
        }
        return moved;
    }

    /** The currents of one combination, A: where the limits by the model's own voltages meet. */
    double[] amps(long on) {
        Fixing decided = new Fixing(on, ~on);
        Box box = new Box(model, model, blockOf, low, high).tightened(decided, MOST_SETTLINGS);
        double[] amps = new double[low.length];
        Arrays.setAll(amps, taker -> decided.isOn(blockOf[taker]) ? (box.low[taker] + box.high[taker]) / 2 : 0);
        return amps;
    }

    /** Least current of a taker while it runs, A. */
    double lowAmps(int taker) {
        return low[taker];
    }

    /** Most current of a taker while it runs, A. */
    double highAmps(int taker) {
        return high[taker];
    }
}
