package org.ohmloom.size.joint;

import java.util.List;

/**
 * The dual over the listed options themselves: at prices of a volt of each budget, every part takes the option with the
 * least of cost + price of what it spends. Its value is a lower bound like that of the {@link Relaxation} and no weaker at
 * the same prices, since nothing lies between the options.
 */
final class OptionDual {
    private final JointProblem problem;

    OptionDual(JointProblem problem) {
        this.problem = problem;
    }

    /**
     * What the options are worth at some prices.
     *
     * @param prices  price of a volt of each budget
     * @param value   the bound
     * @param reduced for each part and option how much more it is than the best option of the part, 0 or more
     * @param best    the best option of each part
     */
    record Priced(double[] prices, double value, double[][] reduced, int[] best) {}

    /** The options at those prices. */
    Priced at(double[] prices) {
        List<Part> parts = problem.parts();
        double[][] weights = new double[parts.size()][];
        for (int part = 0; part < weights.length; part++) {
            weights[part] = new double[parts.get(part).curves()];
        }
        double value = 0;
        for (int budget = 0; budget < prices.length; budget++) {
            value -= prices[budget] * problem.budgets().get(budget).volts();
            if (prices[budget] > 0) {
                for (Share share : problem.budgets().get(budget).shares()) {
                    weights[share.part()][share.curve()] += prices[budget] * share.amps();
                }
            }
        }
        double[][] reduced = new double[parts.size()][];
        int[] best = new int[parts.size()];
        for (int index = 0; index < best.length; index++) {
            Part part = parts.get(index);
            reduced[index] = worth(part, weights[index]);
            for (int option = 1; option < part.options(); option++) {
                best[index] = reduced[index][option] < reduced[index][best[index]] ? option : best[index];
            }
            double least = reduced[index][best[index]];
            value += least;
            for (int option = 0; option < part.options(); option++) {
                reduced[index][option] -= least;
            }
        }
        return new Priced(prices, value, reduced, best);
    }

    private static double[] worth(Part part, double[] weights) {
        double[] worth = new double[part.options()];
        for (int option = 0; option < worth.length; option++) {
            worth[option] = part.cost(option);
            for (int curve = 0; curve < weights.length; curve++) {
                worth[option] += weights[curve] * part.ohms(curve, option);
            }
        }
        return worth;
    }

    /**
     * The best prices found by steps along the subgradient, each as long as the distance to a known cost suggests.
     *
     * @param start     prices to begin at
     * @param knownCost cost of a choice that keeps all budgets
     * @param steps     how many
     */
    Priced improved(double[] start, double knownCost, int steps) {
        Priced best = at(start);
        Priced current = best;
        double factor = 1;
        int idle = 0;
        for (int step = 0; step < steps; step++) {
            double[] slope = slope(current);
            double square = 0;
            for (double each : slope) {
                square += each * each;
            }
            double missing = knownCost - current.value();
            if (square == 0 || missing <= JointProblem.SAME * Math.abs(knownCost)) {
                break;
            }
            double length = factor * missing / square;
            double[] next = new double[slope.length];
            for (int budget = 0; budget < next.length; budget++) {
                next[budget] = Math.max(0, current.prices()[budget] + length * slope[budget]);
            }
            current = at(next);
            if (current.value() > best.value()) {
                best = current;
                idle = 0;
            } else if (++idle == 8) {
                idle = 0;
                factor /= 2;
                current = best;
            }
        }
        return best;
    }

    /** What the best options spend beyond each budget, V; 0 for a budget without a price that is not used up. */
    private double[] slope(Priced priced) {
        double[] slope = new double[priced.prices().length];
        for (int budget = 0; budget < slope.length; budget++) {
            double excess = problem.spentVolts(budget, priced.best())
                    - problem.budgets().get(budget).volts();
            slope[budget] = excess < 0 && priced.prices()[budget] == 0 ? 0 : excess;
        }
        return slope;
    }
}
