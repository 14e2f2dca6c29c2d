package org.ohmloom.size.joint;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.units.Require;

/**
 * Parts to choose options for at the least sum of costs while every budget is kept. Immutable.
 */
public final class JointProblem {

    /** A budget spent up to this share more than it holds is kept: rounding. */
    static final double SAME = 1e-9;

    /** A budget and what a part spends of it. */
    record Spent(int budget, Share share) {}

    private final List<Part> parts;
    private final List<Budget> budgets;
    private final List<List<Spent>> byPart;

    private JointProblem(List<Part> parts, List<Budget> budgets, List<List<Spent>> byPart) {
        this.parts = parts;
        this.budgets = budgets;
        this.byPart = byPart;
    }

    /** A problem of parts and budgets whose shares name the parts by their place in the list. */
    public static JointProblem of(List<Part> parts, List<Budget> budgets) {
        List<List<Spent>> byPart = new ArrayList<>();
        parts.forEach(part -> byPart.add(new ArrayList<>(2)));
        for (int budget = 0; budget < budgets.size(); budget++) {
            for (Share share : budgets.get(budget).shares()) {
                Part part = parts.get(share.part());
                Require.that(share.curve() >= 0 && share.curve() < part.curves(), "%s has no such curve", part.id());
                byPart.get(share.part()).add(new Spent(budget, share));
            }
        }
        return new JointProblem(List.copyOf(parts), List.copyOf(budgets), byPart);
    }

    /** The parts. */
    public List<Part> parts() {
        return parts;
    }

    /** The budgets. */
    public List<Budget> budgets() {
        return budgets;
    }

    /** Count of all shares. */
    long shares() {
        return budgets.stream().mapToLong(budget -> budget.shares().size()).sum();
    }

    /** What a part spends, and of which budgets. */
    List<Spent> spentBy(int part) {
        return byPart.get(part);
    }

    /** What a share spends with an option of its part, V. */
    double volts(Share share, int option) {
        return share.amps() * parts.get(share.part()).ohms(share.curve(), option);
    }

    /** Sum of the costs of a choice: one option for each part. */
    public double cost(int[] choice) {
        double sum = 0;
        for (int part = 0; part < choice.length; part++) {
            sum += parts.get(part).cost(choice[part]);
        }
        return sum;
    }

    /** What a choice spends of a budget, V. */
    public double spentVolts(int budget, int[] choice) {
        double sum = 0;
        for (Share share : budgets.get(budget).shares()) {
            sum += volts(share, choice[share.part()]);
        }
        return sum;
    }

    /** Whether a budget is kept when so much of it is spent, V. */
    static boolean kept(double budgetVolts, double spentVolts) {
        return spentVolts <= budgetVolts + SAME * Math.max(Math.abs(budgetVolts), spentVolts);
    }

    /** Whether a choice keeps every budget. */
    public boolean isKept(int[] choice) {
        for (int budget = 0; budget < budgets.size(); budget++) {
            if (!kept(budgets.get(budget).volts(), spentVolts(budget, choice))) {
                return false;
            }
        }
        return true;
    }

    /** The least a budget can be spent, over all options of each share, V. */
    double leastVolts(Budget budget) {
        double sum = 0;
        for (Share share : budget.shares()) {
            sum += leastVolts(share);
        }
        return sum;
    }

    /** The least a share can spend, V. */
    double leastVolts(Share share) {
        Part part = parts.get(share.part());
        double least = Double.POSITIVE_INFINITY;
        for (int option = 0; option < part.options(); option++) {
            least = Math.min(least, part.ohms(share.curve(), option));
        }
        return share.amps() * least;
    }
}
