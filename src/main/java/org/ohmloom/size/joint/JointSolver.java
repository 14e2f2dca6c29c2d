package org.ohmloom.size.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Chooses the options of a {@link JointProblem} at the least cost, with a proven lower bound. Proven least where branch and
 * bound ends within its count of steps (small networks, and larger ones that fall apart); otherwise the best found and
 * the gap. The same problem always gives the same answer. Above 150 parts that hang together only bound and descent are
 * used; 10,000 wires take seconds.
 */
public final class JointSolver {
    /** Steps of branch and bound, about a second. */
    private static final long STEPS = 5_000_000;

    private JointSolver() {}

    /** The best choice found. A budget that no choice keeps is named and left out. */
    public static JointAnswer solve(JointProblem problem) {
        List<Budget> possible = new ArrayList<>();
        List<String> unmet = new ArrayList<>();
        for (Budget budget : problem.budgets()) {
            if (JointProblem.kept(budget.volts(), problem.leastVolts(budget))) {
                possible.add(budget);
            } else {
                unmet.add(budget.id());
            }
        }
        JointProblem kept = unmet.isEmpty() ? problem : JointProblem.of(problem.parts(), possible);
        Optional<Search.Solved> found = Search.of(kept, STEPS);
        if (found.isEmpty()) {
            return dearest(problem);
        }
        Search.Solved solved = found.get();
        return new JointAnswer(
                Arrays.stream(solved.choice()).boxed().toList(),
                solved.cost(),
                Math.min(solved.cost(), solved.bound()),
                Math.min(solved.cost(), solved.continuous()),
                unmet);
    }

    /** Each budget can be kept alone, yet no choice was found that keeps all: the dearest, and what they do not keep. */
    private static JointAnswer dearest(JointProblem problem) {
        int[] choice =
                problem.parts().stream().mapToInt(part -> part.options() - 1).toArray();
        List<String> unmet = new ArrayList<>();
        for (int budget = 0; budget < problem.budgets().size(); budget++) {
            Budget each = problem.budgets().get(budget);
            if (!JointProblem.kept(each.volts(), problem.spentVolts(budget, choice))) {
                unmet.add(each.id());
            }
        }
        double least =
                problem.parts().stream().mapToDouble(part -> part.cost(0)).sum();
        return new JointAnswer(Arrays.stream(choice).boxed().toList(), problem.cost(choice), least, least, unmet);
    }

    /**
     * The dual value of the continuous relaxation: no choice that keeps the budgets costs less, whatever sizes there are
     * between the cheapest and the dearest of each part. Budgets no choice keeps are left out.
     */
    public static double continuousBound(JointProblem problem) {
        Optional<Reduction> reduction = Reduction.of(JointProblem.of(
                problem.parts(),
                problem.budgets().stream()
                        .filter(budget -> JointProblem.kept(budget.volts(), problem.leastVolts(budget)))
                        .toList()));
        JointProblem relaxed = reduction
                .map(each -> JointProblem.of(problem.parts(), each.problem().budgets()))
                .orElse(problem);
        return DualAscent.of(Relaxation.of(relaxed)).value();
    }
}
