package org.ohmloom.size.joint;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;

/**
 * Branch and bound over all options with fixed prices: a part at a time, cheapest reduced cost first; a branch ends when the
 * bound reaches the best choice known, or when the parts left cannot keep some budget even at their largest.
 */
final class Enumeration {
    private final JointProblem problem;
    private final OptionDual.Priced priced;
    private final Integer[] order;
    private final Integer[][] options;
    private final double[] room;
    private final int[] choice;
    private final Effort effort;
    private double best;
    private Optional<int[]> found = Optional.empty();
    private boolean complete = true;
    private long steps;

    private Enumeration(JointProblem problem, OptionDual.Priced priced, double knownCost, Effort effort) {
        this.problem = problem;
        this.priced = priced;
        this.best = knownCost;
        this.effort = effort;
        int parts = problem.parts().size();
        order = new Integer[parts];
        options = new Integer[parts][];
        for (int part = 0; part < parts; part++) {
            order[part] = part;
            options[part] = new Integer[problem.parts().get(part).options()];
            for (int option = 0; option < options[part].length; option++) {
                options[part][option] = option;
            }
            double[] reduced = priced.reduced()[part];
            Arrays.sort(options[part], Comparator.comparingDouble(option -> reduced[option]));
        }
        Arrays.sort(order, Comparator.comparingDouble(part -> -second(part)));
        room = new double[problem.budgets().size()];
        for (int budget = 0; budget < room.length; budget++) {
            Budget each = problem.budgets().get(budget);
            room[budget] = each.volts() + JointProblem.SAME * Math.abs(each.volts()) - problem.leastVolts(each);
        }
        choice = new int[parts];
    }

    /** Reduced cost of the second best option of a part: what it costs to decide it otherwise. */
    private double second(int part) {
        return options[part].length < 2 ? Double.POSITIVE_INFINITY : priced.reduced()[part][options[part][1]];
    }

    /**
     * The end of a search.
     *
     * @param choice   a choice that costs less than the one known before; empty when there is none or none was found
     * @param complete whether all options were looked at, so that the best known is the least there is
     * @param steps    how many options were tried
     */
    record Outcome(Optional<int[]> choice, boolean complete, long steps) {}

    /** Looks for a choice that costs less than a known one. */
    static Outcome below(JointProblem problem, OptionDual.Priced priced, double knownCost, Effort effort) {
        Enumeration search = new Enumeration(problem, priced, knownCost, effort);
        search.decide(0, priced.value());
        return new Outcome(search.found, search.complete, search.steps);
    }

    private void decide(int depth, double bound) {
        if (depth == order.length) {
            double cost = problem.cost(choice);
            if (cost < best && problem.isKept(choice)) {
                best = cost;
                found = Optional.of(choice.clone());
            }
            return;
        }
        int part = order[depth];
        for (int option : options[part]) {
            double next = bound + priced.reduced()[part][option];
            if (next >= best * (1 - JointProblem.SAME)) {
                return;
            }
            steps++;
            if (!effort.spend(1)) {
                complete = false;
                return;
            }
            if (take(part, option, 1)) {
                choice[part] = option;
                decide(depth + 1, next);
            }
            take(part, option, -1);
        }
    }

    /** Spends for an option beyond the least of its part; whether all budgets can still be kept. */
    private boolean take(int part, int option, int sign) {
        boolean kept = true;
        for (JointProblem.Spent each : problem.spentBy(part)) {
            room[each.budget()] -= sign * (problem.volts(each.share(), option) - problem.leastVolts(each.share()));
            kept &= room[each.budget()] >= -1e-12;
        }
        return kept;
    }
}
