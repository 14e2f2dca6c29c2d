package org.ohmloom.size.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

@BesideOthers
class LargeNetworkTest {
    /** A choice is at most this share of its cost above the proven bound. */
    private static final double MOST_GAP = 0.05;
    /** Sizes between the listed ones save at most this share. */
    private static final double MOST_CONTINUOUS_GAP = 0.12;

    private static JointAnswer kept(JointProblem problem) {
        JointAnswer answer = JointSolver.solve(problem);
        int[] choice = answer.options().stream().mapToInt(Integer::intValue).toArray();
        assertTrue(problem.isKept(choice));
        assertTrue(answer.unmet().isEmpty());
        assertEquals(problem.cost(choice), answer.cost(), 1e-9 * answer.cost());
        assertTrue(answer.continuousBound() <= answer.lowerBound() * (1 + 1e-9));
        assertTrue(answer.lowerBound() <= answer.cost() * (1 + 1e-9));
        assertTrue(answer.gapRatio() <= MOST_GAP, "gap " + answer.gapRatio());
        assertTrue(answer.cost() <= answer.continuousBound() * (1 + MOST_CONTINUOUS_GAP));
        return answer;
    }

    @Test
    void networksOfTwentyWiresAreSolvedToTheProvenLeast() {
        for (long seed = 0; seed < 6; seed++) {
            assertTrue(kept(RandomTrees.large(seed, 10, 10, 2)).isProvenLeast(), "seed " + seed);
        }
    }

    @Test
    void networksOfHundredsOfWiresComeWithinAFewPercentOfTheBound() {
        for (long seed = 0; seed < 3; seed++) {
            kept(RandomTrees.large(seed, 80, 80, 2));
            kept(RandomTrees.large(seed, 200, 200, 1));
        }
    }

    @Test
    void tenThousandWiresAreChosenAllAtOnce() {
        kept(RandomTrees.large(1, 5000, 5000, 2));
    }

    @Test
    void theSameNetworkIsAlwaysChosenTheSame() {
        assertEquals(kept(RandomTrees.large(1, 20, 20, 2)), kept(RandomTrees.large(1, 20, 20, 2)));
    }
}
