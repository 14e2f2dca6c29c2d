package org.ohmloom.solve.envelope;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * Finds the allowed combination with the largest value, by branch and bound.
 *
 * <p>At each step everything that follows from the decisions so far is settled by {@link Allowed}; the bound is what is
 * decided plus the {@link Relaxation} of what is free. A step whose bound does not beat the best combination found ends;
 * otherwise the free block that matters most is decided, first the way that promises more. When nothing is left the best
 * combination is the maximum. After {@code mostSteps} steps what is left open counts with its bound: the result is then not
 * proven, and its bound still is one. The same input always takes the same steps.
 */
final class Maximum {
    /** Differences below this share of the value count as none. */
    static final double SAME_RATIO = 1e-7;

    private static final double SAME_FLOOR = 1e-10;
    private static final int CHECK_EVERY = 256;

    private final Allowed allowed;
    private final Relaxation relaxation;
    private final Objective objective;
    private final int mostSteps;
    private final BooleanSupplier cancelled;
    private int steps;
    private Optional<Long> best = Optional.empty();
    private double bestValue = Double.NEGATIVE_INFINITY;
    private double openBound = Double.NEGATIVE_INFINITY;
    private boolean complete = true;

    /** The result of a search. */
    static final class Found {
        private final Optional<Long> on;
        private final double value;
        private final double bound;
        private final boolean complete;
        private final int steps;

        private Found(Maximum search) {
            on = search.best;
            value = search.bestValue;
            bound = Math.max(search.bestValue, search.openBound);
            complete = search.complete;
            steps = search.steps;
        }

        /** The best combination found; empty when none is allowed or counts, or when the search ended before the first. */
        Optional<Long> on() {
            return on;
        }

        /** Its value; minus infinity without one. */
        double value() {
            return value;
        }

        /** No allowed combination has more; minus infinity when there is none at all. */
        double bound() {
            return bound;
        }

        /** Whether the whole tree was searched. */
        boolean isComplete() {
            return complete;
        }

        int steps() {
            return steps;
        }
    }

    private Maximum(
            Allowed allowed, Relaxation relaxation, Objective objective, int mostSteps, BooleanSupplier cancelled) {
        this.allowed = allowed;
        this.relaxation = relaxation;
        this.objective = objective;
        this.mostSteps = mostSteps;
        this.cancelled = cancelled;
    }

    /**
     * Searches.
     *
     * @param allowed    the rules
     * @param relaxation the bound under these rules
     * @param objective  what to make large
     * @param required   blocks that must run
     * @param atLeast    a value known already: combinations that do not beat it need not be found; minus infinity for none
     * @param mostSteps  most steps of the search
     * @param cancelled  asks to stop
     */
    static Found of(
            Allowed allowed,
            Relaxation relaxation,
            Objective objective,
            long required,
            double atLeast,
            int mostSteps,
            BooleanSupplier cancelled) {
        Maximum search = new Maximum(allowed, relaxation, objective, mostSteps, cancelled);
        search.bestValue = atLeast;
        search.step(Fixing.NONE.withOn(required));
        return new Found(search);
    }

    private boolean beatsBest(double value) {
        if (Double.isInfinite(bestValue)) {
            return value > bestValue;
        }
        return value > bestValue + SAME_FLOOR + SAME_RATIO * Math.abs(bestValue);
    }

    private void step(Fixing decided) {
        Optional<Fixing> settled = allowed.settle(decided);
        if (settled.isEmpty()) {
            return;
        }
        Fixing at = settled.get();
        if (++steps % CHECK_EVERY == 0 && cancelled.getAsBoolean()) {
            throw new CancellationException("envelope cancelled");
        }
        double[] weights = new double[allowed.count()];
        double bound = objective.weights(at, weights);
        for (int block = 0; block < weights.length; block++) {
            bound += at.isOn(block) ? weights[block] : 0;
        }
        bound += relaxation.free(at, weights);
        if (beatsBest(bound)) {
            complete(at, weights);
        }
        if (!beatsBest(bound)) {
            // at most the tolerance better than the best: the bound keeps what is cut off
            openBound = Math.max(openBound, bound);
            return;
        }
        int next = mostImportant(at, weights);
        if (next < 0 || steps >= mostSteps) {
            openBound = Math.max(openBound, bound);
            complete &= next < 0;
            return;
        }
        long bit = 1L << next;
        if (weights[next] > 0) {
            step(at.withOn(bit));
            step(at.withOff(bit));
        } else {
            step(at.withOff(bit));
            step(at.withOn(bit));
        }
    }

    /** Tries the decisions completed greedily: what adds most first, the rest off. */
    private void complete(Fixing at, double[] weights) {
        Fixing now = at;
        long tried = 0;
        while (true) {
            int next = -1;
            for (int block = 0; block < weights.length; block++) {
                if (now.isFree(block)
                        && (tried >>> block & 1) == 0
                        && weights[block] > 0
                        && (next < 0 || weights[block] > weights[next])) {
                    next = block;
                }
            }
            if (next < 0) {
                break;
            }
            tried |= 1L << next;
            now = allowed.settle(now.withOn(1L << next)).orElse(now);
        }
        allowed.settle(now.withOff(now.free(allowed.all()))).ifPresent(full -> candidate(full.on()));
    }

    private void candidate(long on) {
        OptionalDouble value = objective.value(on);
        if (value.isPresent() && (value.getAsDouble() > bestValue)) {
            bestValue = value.getAsDouble();
            best = Optional.of(on);
        }
    }

    private int mostImportant(Fixing at, double[] weights) {
        int most = -1;
        double mostWeight = -1;
        for (int block = 0; block < weights.length; block++) {
            double weight = Math.abs(weights[block]) + objective.influence(block);
            if (at.isFree(block) && weight > mostWeight) {
                most = block;
                mostWeight = weight;
            }
        }
        return most;
    }
}
