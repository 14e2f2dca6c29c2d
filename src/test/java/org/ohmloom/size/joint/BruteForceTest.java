package org.ohmloom.size.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

@BesideOthers
class BruteForceTest {
    private static final double SAME_COST = 1e-9;

    private record Tried(double leastCost, boolean possible) {}

    /** Every option of every wire with every other, the drops added up along each way anew. */
    private static Tried all(JointProblem problem) {
        int[] choice = new int[problem.parts().size()];
        double least = Double.POSITIVE_INFINITY;
        while (true) {
            boolean kept = true;
            for (Budget budget : problem.budgets()) {
                double volts = 0;
                for (Share share : budget.shares()) {
                    volts += share.amps() * problem.parts().get(share.part()).ohms(share.curve(), choice[share.part()]);
                }
                kept &= volts <= budget.volts() * (1 + SAME_COST);
            }
            double cost = 0;
            for (int part = 0; part < choice.length; part++) {
                cost += problem.parts().get(part).cost(choice[part]);
            }
            least = kept ? Math.min(least, cost) : least;
            int next = 0;
            while (next < choice.length
                    && ++choice[next] == problem.parts().get(next).options()) {
                choice[next++] = 0;
            }
            if (next == choice.length) {
                return new Tried(least, least < Double.POSITIVE_INFINITY);
            }
        }
    }

    @Test
    void theJointChoiceOfRandomSmallNetworksIsTheLeastOfAllChoices() {
        int possible = 0;
        for (long seed = 0; seed < RandomTrees.count(); seed++) {
            JointProblem problem = RandomTrees.small(seed);
            Tried tried = all(problem);
            JointAnswer answer = JointSolver.solve(problem);
            assertEquals(tried.possible(), answer.unmet().isEmpty(), "seed " + seed);
            if (tried.possible()) {
                possible++;
                int[] choice =
                        answer.options().stream().mapToInt(Integer::intValue).toArray();
                assertTrue(problem.isKept(choice), "seed " + seed);
                assertEquals(tried.leastCost(), problem.cost(choice), SAME_COST * tried.leastCost(), "seed " + seed);
                assertTrue(answer.isProvenLeast(), "seed " + seed);
                assertTrue(answer.continuousBound() <= tried.leastCost() * (1 + SAME_COST), "seed " + seed);
            }
        }
        assertTrue(possible > RandomTrees.count() / 2, possible + " networks have a choice");
    }

    @Test
    void ofTwoWiresInSeriesTheOneThatGainsMoreForItsCopperGrows() {
        // 1 m and 3 m in series, 10 A: 1 mm2 loses 0.172 V a metre, 1.5 mm2 0.115, 2.5 mm2 0.069
        Part near = Part.of("near", new double[] {1, 1.5, 2.5}, new double[] {0.0172, 0.0115, 0.0069});
        Part far = Part.of("far", new double[] {3, 4.5, 7.5}, new double[] {0.0517, 0.0345, 0.0207});
        Budget budget = new Budget("lamp", 0.48, List.of(new Share(0, 0, 10), new Share(1, 0, 10)));
        JointAnswer answer = JointSolver.solve(JointProblem.of(List.of(near, far), List.of(budget)));
        // 1 and 2.5 mm2 lose 0.379 V for 8.5, 2.5 and 1.5 lose 0.414 V for 7, 1.5 and 1.5 lose 0.46 V for 6
        assertEquals(List.of(1, 1), answer.options());
        assertEquals(6, answer.cost(), SAME_COST);
        // far with 3 alone loses 0.517 V, so it costs at least 4.5 and loses 0.345 V; the 0.135 V left ask near for
        // 0.0172 V x 10 / 0.135 = 1.274
        assertEquals(5.774, answer.continuousBound(), 1e-3);
        assertEquals(6, answer.lowerBound(), 1e-6);
    }

    @Test
    void aBudgetNoChoiceKeepsIsNamedAndTheOthersAreKept() {
        Part wire = Part.of("wire", new double[] {1, 2}, new double[] {0.02, 0.01});
        Budget much = new Budget("much", 0.05, List.of(new Share(0, 0, 10)));
        Budget little = new Budget("little", 0.05, List.of(new Share(0, 0, 5)));
        JointAnswer answer = JointSolver.solve(JointProblem.of(List.of(wire), List.of(much, little)));
        assertEquals(List.of("much"), answer.unmet());
        assertEquals(List.of(1), answer.options());
    }
}
