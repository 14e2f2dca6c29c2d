package org.ohmloom.size.joint;

import java.util.List;

/**
 * The continuous relaxation and its dual: sizes between the listed ones are allowed.
 *
 * <p>For every option of a part cost x resistance is at least P (for one conductor: density x resistivity x length squared),
 * so the resistance is at least P / cost. With a price of lambda for a volt of each budget, the dual value is
 *
 * <p>g(lambda) = sum over parts of min over its costs c of (c + w / c) - sum of lambda x budget, w = sum of lambda x amps x P,
 *
 * <p>and the minimum is at c = sqrt(w) held between the cheapest and the dearest option: the square-root rule, with floors
 * and locked parts. By weak duality g is no more than the cost of any choice that keeps all budgets, for any lambda not
 * below 0; {@link DualAscent} looks for the largest.
 */
final class Relaxation {
    private final double[] floors;
    private final double[] ceilings;
    private final double[] budgets;
    /** Parts of each budget. */
    private final int[][] parts;
    /** Amps x P beside each of them. */
    private final double[][] weights;

    private Relaxation(double[] floors, double[] ceilings, double[] budgets, int[][] parts, double[][] weights) {
        this.floors = floors;
        this.ceilings = ceilings;
        this.budgets = budgets;
        this.parts = parts;
        this.weights = weights;
    }

    /**
     * A relaxation from its numbers.
     *
     * @param floors   least cost of each part, 0 or more
     * @param ceilings most cost of each part, infinity for none
     * @param budgets  what may be spent, V
     * @param parts    for each budget the parts that spend of it
     * @param weights  beside each of them what it spends times what it costs, V x cost
     */
    static Relaxation of(double[] floors, double[] ceilings, double[] budgets, int[][] parts, double[][] weights) {
        return new Relaxation(floors.clone(), ceilings.clone(), budgets.clone(), parts.clone(), weights.clone());
    }

    /** The relaxation of a problem. */
    static Relaxation of(JointProblem problem) {
        List<Part> all = problem.parts();
        double[] floors = new double[all.size()];
        double[] ceilings = new double[all.size()];
        for (int part = 0; part < floors.length; part++) {
            floors[part] = all.get(part).cost(0);
            ceilings[part] = all.get(part).cost(all.get(part).options() - 1);
        }
        int count = problem.budgets().size();
        double[] budgets = new double[count];
        int[][] parts = new int[count][];
        double[][] weights = new double[count][];
        for (int budget = 0; budget < count; budget++) {
            List<Share> shares = problem.budgets().get(budget).shares();
            budgets[budget] = problem.budgets().get(budget).volts();
            parts[budget] = new int[shares.size()];
            weights[budget] = new double[shares.size()];
            for (int k = 0; k < shares.size(); k++) {
                Share share = shares.get(k);
                parts[budget][k] = share.part();
                weights[budget][k] = share.amps() * all.get(share.part()).product(share.curve());
            }
        }
        return new Relaxation(floors, ceilings, budgets, parts, weights);
    }

    int parts() {
        return floors.length;
    }

    int budgets() {
        return budgets.length;
    }

    double budgetVolts(int budget) {
        return budgets[budget];
    }

    int[] partsOf(int budget) {
        return parts[budget];
    }

    double[] weightsOf(int budget) {
        return weights[budget];
    }

    /** w of every part at those prices. */
    double[] weightSums(double[] prices) {
        double[] sums = new double[floors.length];
        for (int budget = 0; budget < budgets.length; budget++) {
            if (prices[budget] != 0) {
                for (int k = 0; k < parts[budget].length; k++) {
                    sums[parts[budget][k]] += prices[budget] * weights[budget][k];
                }
            }
        }
        return sums;
    }

    /** The cost of a part that answers a weight best. */
    double cost(int part, double weightSum) {
        return Math.min(ceilings[part], Math.max(floors[part], Math.sqrt(Math.max(0, weightSum))));
    }

    /** Whether a part at that weight moves with it: neither at its floor nor at its ceiling. */
    boolean moves(int part, double weightSum) {
        double root = Math.sqrt(Math.max(0, weightSum));
        return root > floors[part] && root < ceilings[part];
    }

    /** g at those prices. */
    double value(double[] prices) {
        double[] sums = weightSums(prices);
        double value = 0;
        for (int part = 0; part < floors.length; part++) {
            double cost = cost(part, sums[part]);
            value += cost + (sums[part] > 0 ? sums[part] / cost : 0);
        }
        for (int budget = 0; budget < budgets.length; budget++) {
            value -= prices[budget] * budgets[budget];
        }
        return value;
    }

    /** How much more than it holds a budget is spent at those weights, V; infinite when a part would have no copper. */
    double excessVolts(int budget, double[] sums) {
        double spent = 0;
        for (int k = 0; k < parts[budget].length; k++) {
            int part = parts[budget][k];
            if (weights[budget][k] > 0) {
                spent += weights[budget][k] / cost(part, sums[part]);
            }
        }
        return spent - budgets[budget];
    }
}
