package org.ohmloom.size.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.ohmloom.Campaign;

/**
 * Feed and return trees drawn at random with a fixed seed: loads hang on a feed tree and go back over a return tree, in one
 * or two states, each with a drop limit of its own. Sizes are areas in mm2, a metre of them costs its area, floors and
 * locked wires are options left out.
 */
final class RandomTrees {
    /** Networks of a whole campaign. */
    static final int CAMPAIGN = 200;

    /** Networks of an ordinary build. */
    static final int SAMPLE = 60;

    private static final double RHO = 1.0 / 58;
    private static final double[] AREAS = {0.35, 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25};

    private final Random random;

    private RandomTrees(long seed) {
        random = new Random(seed);
    }

    /** How many networks this build looks at: all with the system property ohmloom.campaign=full. */
    static int count() {
        return Campaign.count(SAMPLE, CAMPAIGN);
    }

    /** Few enough choices to try them all: 2 to 7 wires of 1 to 6 sizes. */
    static JointProblem small(long seed) {
        RandomTrees draft = new RandomTrees(seed);
        return draft.problem(1 + draft.random.nextInt(4), draft.random.nextInt(4), 1 + draft.random.nextInt(2), 6);
    }

    /**
     * So many feed and return wires of up to 11 sizes; each budget is what all wires lose at a middle size, times 0.5 to
     * 1.5, or twice what they lose at the largest where that is more.
     */
    static JointProblem large(long seed, int feeds, int returns, int states) {
        RandomTrees draft = new RandomTrees(seed);
        JointProblem problem = draft.problem(feeds, returns, states, AREAS.length);
        int[] middle =
                problem.parts().stream().mapToInt(part -> part.options() / 2).toArray();
        List<Budget> budgets = new ArrayList<>();
        for (int budget = 0; budget < problem.budgets().size(); budget++) {
            Budget each = problem.budgets().get(budget);
            double volts = Math.max(
                    problem.spentVolts(budget, middle) * (0.5 + draft.random.nextDouble()),
                    2 * problem.leastVolts(each));
            budgets.add(new Budget(each.id(), volts, each.shares()));
        }
        return JointProblem.of(problem.parts(), budgets);
    }

    private JointProblem problem(int feeds, int returns, int states, int mostSizes) {
        int[] feedParent = parents(feeds);
        int[] returnParent = parents(returns);
        double[] lengths = random.doubles(feeds + returns, 0.3, 5).toArray();
        List<Budget> budgets = new ArrayList<>();
        List<double[]> amps = new ArrayList<>();
        List<int[]> ways = new ArrayList<>();
        for (int load = 0; load < Math.max(1, feeds); load++) {
            ways.add(way(feedParent, returnParent, feeds, load, returns > 0 ? random.nextInt(returns) : -1));
        }
        double[] limits = random.doubles(ways.size(), 0.2, 0.9).toArray();
        for (int state = 0; state < states; state++) {
            double[] sums = new double[feeds + returns];
            boolean[] on = new boolean[ways.size()];
            for (int load = 0; load < ways.size(); load++) {
                on[load] = random.nextInt(4) > 0;
                double own = on[load] ? 0.5 + random.nextInt(12) : 0;
                Arrays.stream(ways.get(load)).forEach(wire -> sums[wire] += own);
            }
            amps.add(sums);
            for (int load = 0; load < ways.size(); load++) {
                if (on[load]) {
                    int curve = state;
                    List<Share> shares = Arrays.stream(ways.get(load))
                            .mapToObj(wire -> new Share(wire, curve, sums[wire]))
                            .toList();
                    budgets.add(new Budget("load " + load + " in state " + state, limits[load], shares));
                }
            }
        }
        List<Part> parts = new ArrayList<>();
        for (int wire = 0; wire < lengths.length; wire++) {
            parts.add(part(wire, lengths[wire], states, mostSizes));
        }
        return JointProblem.of(parts, budgets);
    }

    private Part part(int wire, double lengthMetres, int states, int mostSizes) {
        int first = random.nextInt(AREAS.length - mostSizes + 1);
        int last = random.nextInt(8) == 0 ? first : first + mostSizes - 1;
        double[] costs = new double[last - first + 1];
        double[][] ohms = new double[states][costs.length];
        for (int option = 0; option < costs.length; option++) {
            double area = AREAS[first + option];
            costs[option] = area * lengthMetres;
            for (int state = 0; state < states; state++) {
                // warmer in one state than in the other
                ohms[state][option] = RHO * lengthMetres / area * (1 + 0.1 * state);
            }
        }
        return Part.of("W" + wire, costs, ohms);
    }

    private int[] parents(int count) {
        int[] parents = new int[count];
        for (int wire = 0; wire < count; wire++) {
            parents[wire] =
                    wire == 0 ? -1 : Math.max(0, wire - 1 - random.nextInt(Math.min(wire, Math.max(6, count / 8))));
        }
        return parents;
    }

    private static int[] way(int[] feedParent, int[] returnParent, int feeds, int feedEnd, int returnEnd) {
        List<Integer> way = new ArrayList<>();
        for (int wire = feedEnd; wire >= 0; wire = feedParent[wire]) {
            way.add(wire);
        }
        for (int wire = returnEnd; wire >= 0; wire = returnParent[wire]) {
            way.add(feeds + wire);
        }
        return way.stream().mapToInt(Integer::intValue).toArray();
    }
}
