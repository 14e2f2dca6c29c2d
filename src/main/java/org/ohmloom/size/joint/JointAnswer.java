package org.ohmloom.size.joint;

import java.util.List;

/**
 * The options chosen together.
 *
 * @param options         for each part the place of its option
 * @param cost            what they cost together
 * @param lowerBound      no choice that keeps the same budgets costs less; equal to the cost when the choice is proven least
 * @param continuousBound the same with sizes between the listed ones allowed: the dual value of the continuous relaxation
 * @param unmet           budgets no choice keeps, by id, left out of the choice
 */
public record JointAnswer(
        List<Integer> options, double cost, double lowerBound, double continuousBound, List<String> unmet) {

    public JointAnswer {
        options = List.copyOf(options);
        unmet = List.copyOf(unmet);
    }

    /** The most the choice can be above the least there is, as a share of its cost. */
    public double gapRatio() {
        return cost > 0 ? (cost - lowerBound) / cost : 0;
    }

    /** Whether no other choice costs less, but for rounding. */
    public boolean isProvenLeast() {
        return gapRatio() <= 10 * JointProblem.SAME;
    }
}
