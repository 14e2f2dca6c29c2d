package org.ohmloom.solve.envelope;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A current or voltage to make large within one model: of each combination the sum of its functional over the currents that
 * flow; of what is not decided yet, the most of each taker between the limits of its {@link Box}.
 */
final class ModelObjective implements Objective {
    /** A condition counts as kept when it misses by so much, in A or V. */
    static final double KEPT = 1e-6;

    private final Functional target;
    private final List<Functional> conditions;
    private final Box root;
    private final Blocks blocks;
    private final boolean isLinear;

    /**
     * An objective.
     *
     * @param target     what to make large
     * @param conditions what must not be negative
     * @param root       limits of all currents
     * @param blocks     the blocks
     * @param isLinear   whether every current is constant
     */
    ModelObjective(Functional target, List<Functional> conditions, Box root, Blocks blocks, boolean isLinear) {
        this.target = target;
        this.conditions = conditions;
        this.root = root;
        this.blocks = blocks;
        this.isLinear = isLinear;
    }

    @Override
    public double weights(Fixing at, double[] weights) {
        Box box = isLinear ? root : root.tightened(at);
        for (Functional condition : conditions) {
            if (most(condition, box, at) < -KEPT) {
                return Double.NEGATIVE_INFINITY;
            }
        }
        for (int taker = 0; taker < target.takers(); taker++) {
            weights[blocks.blockOf()[taker]] += most(target, box, taker);
        }
        return target.constant();
    }

    private static double most(Functional of, Box box, int taker) {
        return Math.max(of.perAmp(taker) * box.lowAmps(taker), of.perAmp(taker) * box.highAmps(taker));
    }

    private double most(Functional condition, Box box, Fixing at) {
        double sum = condition.constant();
        for (int taker = 0; taker < condition.takers(); taker++) {
            int block = blocks.blockOf()[taker];
            if (!at.isOff(block)) {
                double most = most(condition, box, taker);
                sum += at.isOn(block) ? most : Math.max(0, most);
            }
        }
        return sum;
    }

    @Override
    public OptionalDouble value(long on) {
        double[] amps = root.amps(on);
        boolean keeps = conditions.stream().allMatch(condition -> condition.at(amps) >= -KEPT);
        return keeps ? OptionalDouble.of(target.at(amps)) : OptionalDouble.empty();
    }
}
