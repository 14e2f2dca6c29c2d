package org.ohmloom.size.joint;

/** A choice being changed, with what it spends of each budget kept up to date. */
final class Ledger {
    private final JointProblem problem;
    private final int[] choice;
    private final double[] spent;

    Ledger(JointProblem problem, int[] choice) {
        this.problem = problem;
        this.choice = choice.clone();
        this.spent = new double[problem.budgets().size()];
        for (int budget = 0; budget < spent.length; budget++) {
            spent[budget] = problem.spentVolts(budget, this.choice);
        }
    }

    int option(int part) {
        return choice[part];
    }

    int[] choice() {
        return choice.clone();
    }

    /** What is spent beyond a budget, V; 0 when it is kept. */
    double excess(int budget) {
        double volts = problem.budgets().get(budget).volts();
        return JointProblem.kept(volts, spent[budget]) ? 0 : spent[budget] - volts;
    }

    /** Gives a part another option. */
    void set(int part, int option) {
        for (JointProblem.Spent each : problem.spentBy(part)) {
            spent[each.budget()] += problem.volts(each.share(), option) - problem.volts(each.share(), choice[part]);
        }
        choice[part] = option;
    }

    /** Whether the budgets a part spends of are kept with another option for it. */
    boolean allows(int part, int option) {
        int before = choice[part];
        set(part, option);
        boolean kept = true;
        for (JointProblem.Spent each : problem.spentBy(part)) {
            if (excess(each.budget()) > 0) {
                kept = false;
                break;
            }
        }
        set(part, before);
        return kept;
    }

    /** How much less is spent beyond budgets with another option for a part, V. */
    double relief(int part, int option) {
        double relief = 0;
        for (JointProblem.Spent each : problem.spentBy(part)) {
            double over = excess(each.budget());
            if (over > 0) {
                double less = problem.volts(each.share(), choice[part]) - problem.volts(each.share(), option);
                relief += Math.min(over, less);
            }
        }
        return relief;
    }
}
