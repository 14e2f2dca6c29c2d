package org.ohmloom.size.joint;

/**
 * Looks for the prices at which the dual of a {@link Relaxation} is largest. Whatever it finds is a valid bound; how good
 * it is decides the gap only.
 *
 * <p>First one budget at a time: its price is raised or lowered until the budget is just spent, over and over (the dual is
 * concave and smooth, so this climbs). Then Newton steps on all prices that matter together, their linear system solved by
 * conjugate gradients without forming it, each step halved until it climbs. O(shares) for a sweep or a gradient step.
 */
final class DualAscent {
    private static final int MOST_SWEEPS = 60;
    private static final int MOST_NEWTON_STEPS = 40;
    private static final int MOST_BISECTIONS = 80;
    private static final double SPENT_RATIO = 1e-7;
    private static final double SMALLEST_GAIN_RATIO = 1e-13;
    /** Share of the value a sweep must gain to be followed by another. */
    private static final double WORTHWHILE_GAIN_RATIO = 1e-5;
    /** Looks at shares it may take, so that a large problem ends in time. */
    private static final long MOST_WORK = 400_000_000L;
    /** Looks at each share one sweep takes, about. */
    private static final long SWEEP_LOOKS = 30;

    private final Relaxation relaxation;
    private final double[] prices;
    private final long shares;
    private double value;

    private DualAscent(Relaxation relaxation, double[] start) {
        this.relaxation = relaxation;
        this.prices = start.clone();
        this.value = relaxation.value(prices);
        long count = 1;
        for (int budget = 0; budget < relaxation.budgets(); budget++) {
            count += relaxation.partsOf(budget).length;
        }
        this.shares = count;
    }

    /**
     * Prices and the dual value at them.
     *
     * @param prices price of a volt of each budget, 0 or more
     * @param value  the bound
     */
    record Found(double[] prices, double value) {}

    /** The best prices found from a start. */
    static Found from(Relaxation relaxation, double[] start) {
        DualAscent ascent = new DualAscent(relaxation, start);
        ascent.sweep();
        ascent.newton();
        return new Found(ascent.prices, ascent.value);
    }

    /** The best prices found from nothing. */
    static Found of(Relaxation relaxation) {
        return from(relaxation, new double[relaxation.budgets()]);
    }

    private void sweep() {
        long most = Math.max(3, Math.min(MOST_SWEEPS, MOST_WORK / (2 * SWEEP_LOOKS * shares)));
        for (int sweep = 0; sweep < most; sweep++) {
            double[] sums = relaxation.weightSums(prices);
            for (int budget = 0; budget < relaxation.budgets(); budget++) {
                spendJust(budget, sums);
            }
            double next = relaxation.value(prices);
            boolean done = next - value <= WORTHWHILE_GAIN_RATIO * Math.abs(next);
            value = Math.max(value, next);
            if (done) {
                return;
            }
        }
    }

    /** Sets the price of one budget to where it is just spent, or to 0 where it is not used up for nothing. */
    private void spendJust(int budget, double[] sums) {
        double before = prices[budget];
        move(budget, sums, -before);
        if (relaxation.excessVolts(budget, sums) <= 0) {
            return;
        }
        double low = 0;
        double high = before > 0 ? before : 1;
        move(budget, sums, high);
        for (int k = 0; k < MOST_BISECTIONS && relaxation.excessVolts(budget, sums) > 0; k++) {
            move(budget, sums, high);
            low = high;
            high *= 2;
        }
        for (int k = 0; k < MOST_BISECTIONS && high - low > SPENT_RATIO * high; k++) {
            double middle = low > 0 ? Math.sqrt(low * high) : high / 1024;
            move(budget, sums, middle - prices[budget]);
            if (relaxation.excessVolts(budget, sums) > 0) {
                low = middle;
            } else {
                high = middle;
            }
            if (high < Double.MIN_NORMAL) {
                break;
            }
        }
        move(budget, sums, high - prices[budget]);
    }

    private void move(int budget, double[] sums, double change) {
        prices[budget] = Math.max(0, prices[budget] + change);
        int[] parts = relaxation.partsOf(budget);
        double[] weights = relaxation.weightsOf(budget);
        for (int k = 0; k < parts.length; k++) {
            sums[parts[k]] = Math.max(0, sums[parts[k]] + change * weights[k]);
        }
    }

    private void newton() {
        DualNewton newton = new DualNewton(relaxation);
        long gradients = MOST_WORK / 2 / shares;
        for (int step = 0; step < MOST_NEWTON_STEPS && gradients > 0; step++) {
            double[] direction = newton.direction(prices, (int) Math.min(200, gradients));
            gradients -= newton.steps() + 10L;
            if (!climb(direction)) {
                return;
            }
        }
    }

    /** Goes as far along a direction as it climbs, prices held at 0 or more; whether it got anywhere. */
    private boolean climb(double[] direction) {
        double[] tried = new double[prices.length];
        for (double length = 1; length > 1e-8; length /= 2) {
            for (int budget = 0; budget < tried.length; budget++) {
                tried[budget] = Math.max(0, prices[budget] + length * direction[budget]);
            }
            double next = relaxation.value(tried);
            if (next > value) {
                boolean worth = next - value > SMALLEST_GAIN_RATIO * Math.abs(next);
                System.arraycopy(tried, 0, prices, 0, tried.length);
                value = next;
                return worth;
            }
        }
        return false;
    }
}
