package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Searches the largest value of one current or voltage over all models of a situation: each way round and each mode of the
 * sources, in a fixed order.
 */
final class TargetSearch {
    /** Most steps of one search when every current is constant. */
    static final int LINEAR_STEPS = 20_000;

    /** Most steps of one search otherwise. */
    static final int BOUNDED_STEPS = 200;

    /**
     * Work of all searches of a situation: steps times consumers, squared where currents hang on voltages. Ten to twenty times
     * what a vehicle of 150 wires takes.
     */
    static final long MOST_WORK = 150_000_000;

    private final Blocks blocks;
    private final Relaxation relaxation;
    private final List<Model> models = new ArrayList<>();
    private final boolean isLinear;
    private final BooleanSupplier cancelled;
    private final long workOfAStep;
    private long work;

    /** A model with what it needs to be searched. */
    record Model(LinearModel linear, List<Functional> conditions, Box box) {}

    /** The result of a search. */
    static final class Result {
        private final Set<Long> best = new LinkedHashSet<>();
        private double value = Double.NEGATIVE_INFINITY;
        private double bound = Double.NEGATIVE_INFINITY;
        private int steps;

        /** Combinations that were the best when they were found, the last one the best of all. */
        Set<Long> best() {
            return best;
        }

        /** Value of the best, A or V; minus infinity without one. */
        double value() {
            return value;
        }

        /** No combination has more, A or V. */
        double bound() {
            return Math.max(value, bound);
        }

        int steps() {
            return steps;
        }
    }

    TargetSearch(Blocks blocks, List<Model> models, BooleanSupplier cancelled) {
        this.blocks = blocks;
        this.relaxation = new Relaxation(blocks.allowed());
        this.models.addAll(models);
        this.isLinear = isLinear(blocks);
        long takers = Math.max(1, blocks.takers().size());
        this.workOfAStep = isLinear ? takers : takers * takers;
        this.cancelled = cancelled;
    }

    /**
     * Whether the searches so far took the work there is.
     *
     * @param shareFraction the share of all work this kind of search may go up to
     */
    boolean isSpent(double shareFraction) {
        return work > shareFraction * MOST_WORK;
    }

    /** Whether every current is constant. */
    static boolean isLinear(Blocks blocks) {
        return blocks.takers().stream().allMatch(taker -> taker.current().kind() == TakenCurrent.Kind.CONSTANT);
    }

    /** The largest size, either way round, of a sum given for each model. */
    Result largestSize(List<Optional<Functional>> sums) {
        Result result = new Result();
        for (int number = 0; number < models.size(); number++) {
            if (sums.get(number).isPresent()) {
                search(models.get(number), sums.get(number).get(), 0, result);
                search(models.get(number), sums.get(number).get().negated(), 0, result);
            }
        }
        return result;
    }

    /** The largest value, while some blocks run, of a sum given for each model. */
    Result largest(List<Optional<Functional>> sums, long required) {
        Result result = new Result();
        for (int number = 0; number < models.size(); number++) {
            if (sums.get(number).isPresent()) {
                search(models.get(number), sums.get(number).get(), required, result);
            }
        }
        return result;
    }

    private void search(Model model, Functional target, long required, Result result) {
        ModelObjective objective = new ModelObjective(target, model.conditions, model.box, blocks, isLinear);
        Maximum.Found found = Maximum.of(
                blocks.allowed(),
                relaxation,
                objective,
                required,
                result.value,
                isLinear ? LINEAR_STEPS : BOUNDED_STEPS,
                cancelled);
        result.steps += found.steps();
        work += found.steps() * workOfAStep;
        result.bound = Math.max(result.bound, found.bound());
        if (found.on().isPresent()) {
            result.value = found.value();
            result.best.remove(found.on().get());
            result.best.add(found.on().get());
        }
    }
}
