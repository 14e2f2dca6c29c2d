package org.ohmloom.size.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A problem with what cannot matter left out: options that overspend a budget whatever the others are, budgets kept by any
 * choice, budgets that another one implies. The best choice of what is left is the best of the whole.
 */
final class Reduction {
    /** Budgets another one is compared with. */
    private static final int MOST_COMPARED = 48;

    private final JointProblem problem;
    /** Kept options of each part, by their place in the original. */
    private final int[][] options;

    private Reduction(JointProblem problem, int[][] options) {
        this.problem = problem;
        this.options = options;
    }

    JointProblem problem() {
        return problem;
    }

    /** A choice of the reduced problem in the options of the original. */
    int[] original(int[] choice) {
        int[] original = new int[choice.length];
        for (int part = 0; part < original.length; part++) {
            original[part] = options[part][choice[part]];
        }
        return original;
    }

    /** A choice of the original in the options left; where one is gone, the next dearer one. */
    int[] reduced(int[] original) {
        int[] choice = new int[original.length];
        for (int part = 0; part < choice.length; part++) {
            int place = Arrays.binarySearch(options[part], original[part]);
            choice[part] = Math.min(place >= 0 ? place : -place - 1, options[part].length - 1);
        }
        return choice;
    }

    /** The reduced problem; empty when no choice keeps all budgets. */
    static Optional<Reduction> of(JointProblem problem) {
        double[] room = new double[problem.budgets().size()];
        for (int budget = 0; budget < room.length; budget++) {
            Budget each = problem.budgets().get(budget);
            double least = problem.leastVolts(each);
            if (!JointProblem.kept(each.volts(), least)) {
                return Optional.empty();
            }
            room[budget] = Math.max(0, each.volts() - least) + 2 * JointProblem.SAME * Math.abs(each.volts());
        }
        List<Part> parts = new ArrayList<>();
        int[][] options = new int[problem.parts().size()][];
        for (int part = 0; part < options.length; part++) {
            options[part] = possible(problem, part, room);
            if (options[part].length == 0) {
                return Optional.empty();
            }
            parts.add(problem.parts().get(part).only(options[part]));
        }
        JointProblem fewer = JointProblem.of(parts, problem.budgets());
        List<Budget> kept = new ArrayList<>();
        for (int budget = 0; budget < room.length; budget++) {
            Budget each = problem.budgets().get(budget);
            if (!each.shares().isEmpty() && !keptByAll(fewer, each) && !implied(fewer, budget)) {
                kept.add(each);
            }
        }
        return Optional.of(new Reduction(JointProblem.of(parts, kept), options));
    }

    private static int[] possible(JointProblem problem, int part, double[] room) {
        Part each = problem.parts().get(part);
        return IntStream.range(0, each.options())
                .filter(option -> problem.spentBy(part).stream()
                        .allMatch(spent -> problem.volts(spent.share(), option) - problem.leastVolts(spent.share())
                                <= room[spent.budget()]))
                .toArray();
    }

    private static boolean keptByAll(JointProblem problem, Budget budget) {
        double most = 0;
        for (Share share : budget.shares()) {
            double largest = 0;
            for (int option = 0; option < problem.parts().get(share.part()).options(); option++) {
                largest = Math.max(largest, problem.volts(share, option));
            }
            most += largest;
        }
        return most <= budget.volts();
    }

    /** Whether another budget asks at least as much of every part this one passes. */
    private static boolean implied(JointProblem problem, int budget) {
        Budget each = problem.budgets().get(budget);
        int rarest = each.shares().stream()
                .mapToInt(Share::part)
                .boxed()
                .min((one, other) -> Integer.compare(
                        problem.spentBy(one).size(), problem.spentBy(other).size()))
                .orElseThrow();
        int compared = 0;
        for (JointProblem.Spent spent : problem.spentBy(rarest)) {
            if (spent.budget() != budget && compared++ < MOST_COMPARED && implies(problem, spent.budget(), budget)) {
                return true;
            }
        }
        return false;
    }

    private static boolean implies(JointProblem problem, int strict, int loose) {
        Budget one = problem.budgets().get(strict);
        Budget other = problem.budgets().get(loose);
        if (one.volts() <= 0 || other.volts() <= 0) {
            return false;
        }
        Map<Integer, double[]> asked = new HashMap<>();
        one.shares().forEach(share -> add(problem, asked, share, 1 / one.volts()));
        other.shares().forEach(share -> add(problem, asked, share, -1 / other.volts()));
        boolean same = true;
        for (double[] options : asked.values()) {
            for (double each : options) {
                if (each < 0) {
                    return false;
                }
                same &= each == 0;
            }
        }
        // of two that are the same the first stays
        return !same || strict < loose;
    }

    private static void add(JointProblem problem, Map<Integer, double[]> asked, Share share, double factor) {
        int count = problem.parts().get(share.part()).options();
        double[] sums = asked.computeIfAbsent(share.part(), part -> new double[count]);
        for (int option = 0; option < count; option++) {
            sums[option] += factor * problem.volts(share, option);
        }
    }
}
