package org.ohmloom.size.joint;

import java.util.ArrayList;
import java.util.List;

/** A problem with one part decided: what it spends is taken from the budgets, and it is there no more. */
final class Fixing {

    private Fixing() {}

    /** The problem of the other parts. */
    static JointProblem of(JointProblem problem, int part, int option) {
        List<Part> parts = new ArrayList<>(problem.parts());
        parts.remove(part);
        List<Budget> budgets = new ArrayList<>(problem.budgets().size());
        for (Budget budget : problem.budgets()) {
            double volts = budget.volts();
            List<Share> shares = new ArrayList<>(budget.shares().size());
            for (Share share : budget.shares()) {
                if (share.part() == part) {
                    volts -= problem.volts(share, option);
                } else {
                    shares.add(share.part() < part ? share : new Share(share.part() - 1, share.curve(), share.amps()));
                }
            }
            budgets.add(new Budget(budget.id(), volts, shares));
        }
        return JointProblem.of(parts, budgets);
    }

    /** A choice of the others with the decided one back in its place. */
    static int[] whole(int[] others, int part, int option) {
        int[] choice = new int[others.length + 1];
        System.arraycopy(others, 0, choice, 0, part);
        choice[part] = option;
        System.arraycopy(others, part, choice, part + 1, others.length - part);
        return choice;
    }
}
