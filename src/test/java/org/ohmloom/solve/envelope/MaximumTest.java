package org.ohmloom.solve.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;

/** The largest sum over allowed combinations, by hand and against trying all of them. */
@BesideOthers
class MaximumTest {
    private static final double SAME = 1e-6;
    private static final int RANDOM_CASES = Campaign.count(150, 600);
    private static final int PLENTY = 1_000_000;

    /** Blocks with a control each. */
    private static Allowed separate(int count) {
        int[][] needs = new int[count][];
        Arrays.setAll(needs, block -> new int[] {block});
        return new Allowed(needs, count);
    }

    private static int[] ones(int count, int... members) {
        int[] counts = new int[count];
        for (int member : members) {
            counts[member] = 1;
        }
        return counts;
    }

    private static Maximum.Found maximum(Allowed allowed, double... weights) {
        return Maximum.of(
                allowed,
                new Relaxation(allowed),
                Objective.sum(weights),
                0,
                Double.NEGATIVE_INFINITY,
                PLENTY,
                () -> false);
    }

    @Test
    void ofMutuallyExclusiveLoadsTheLargestRuns() {
        // 10 A, 14 A and 9 A, one of them at a time, and 5 A beside them: 14 + 5 = 19 A
        Allowed allowed = separate(4);
        allowed.limit(ones(4, 0, 1, 2), 1);
        Maximum.Found found = maximum(allowed, 10, 14, 9, 5);
        assertEquals(Optional.of(0b1010L), found.on());
        assertEquals(19, found.value(), SAME);
        assertEquals(19, found.bound(), SAME);
    }

    @Test
    void overlappingGroupsAreKeptTogether() {
        // at most two of A B C, at most one of C D, E only with A: 7 + 0 + 9 + 0 + 2 = 18, without C 7 + 6 + 8 + 2 = 23
        Allowed allowed = separate(5);
        allowed.limit(ones(5, 0, 1, 2), 2);
        allowed.limit(ones(5, 2, 3), 1);
        allowed.together(0b10001);
        Maximum.Found found = maximum(allowed, 7, 6, 9, 8, 2);
        assertEquals(23, found.value(), SAME);
        assertEquals(Optional.of(0b11011L), found.on());
    }

    @Test
    void aLoadBehindTheSwitchOfAnotherRunsWithIt() {
        // 6 A and -4 A behind one switch, 3 A behind a second one that also needs the first: 6 - 4 + 3 = 5 A
        Allowed allowed = new Allowed(new int[][] {{0}, {0}, {0, 1}}, 2);
        Maximum.Found found = maximum(allowed, 6, -4, 3);
        assertEquals(5, found.value(), SAME);
        assertEquals(Optional.of(0b111L), found.on());
    }

    @Test
    void aLoadOnABreakContactRunsUnlessItsRelayIsPulledIn() {
        // coil 0 and the pump on its make contact bring 8 A, the lamp on the break contact 5 A: never 13 A
        Allowed allowed = new Allowed(new int[][] {{0}, {0}, {}}, 1);
        allowed.rests(2, 0b001);
        assertEquals(8, maximum(allowed, 0.2, 7.8, 5).value(), SAME);
        assertEquals(5, maximum(allowed, 0.2, 3, 5).value(), SAME);
    }

    @Test
    void anAllowedSetHasAllItsRulesChecked() {
        Allowed allowed = separate(3);
        allowed.limit(new int[] {2, 1, 1}, 2);
        assertTrue(allowed.allows(0b110));
        assertTrue(allowed.allows(0b001));
        assertEquals(Optional.empty(), allowed.settle(new Fixing(0b011, 0)));
    }

    @Test
    void randomRulesGiveWhatTryingAllCombinationsGives() {
        Random random = new Random(7);
        int limited = 0;
        for (int round = 0; round < RANDOM_CASES; round++) {
            RandomRules rules = new RandomRules(random);
            Maximum.Found found = maximum(rules.allowed(), rules.weights());
            double best = rules.bestByTrying();
            String place = "case " + round;
            assertTrue(found.isComplete(), place);
            if (best == Double.NEGATIVE_INFINITY) {
                assertEquals(Optional.empty(), found.on(), place);
                continue;
            }
            assertEquals(best, found.value(), SAME, place);
            assertTrue(found.bound() >= best && found.bound() <= best + SAME * (1 + Math.abs(best)), place);
            assertTrue(rules.isAllowed(found.on().orElseThrow()), place);
            limited++;
        }
        assertTrue(limited > RANDOM_CASES / 2, "only " + limited + " cases had a combination");
    }

    @Test
    void aSearchThatIsCutShortStillHasAValidBound() {
        Random random = new Random(11);
        for (int round = 0; round < RANDOM_CASES; round++) {
            RandomRules rules = new RandomRules(random);
            Maximum.Found found = Maximum.of(
                    rules.allowed(),
                    new Relaxation(rules.allowed()),
                    Objective.sum(rules.weights()),
                    0,
                    Double.NEGATIVE_INFINITY,
                    1 + random.nextInt(4),
                    () -> false);
            assertTrue(found.bound() >= rules.bestByTrying() - SAME, "case " + round);
            found.on().ifPresent(on -> assertTrue(rules.isAllowed(on)));
        }
    }

    @Test
    void aSearchCanBeCancelled() {
        Allowed allowed = separate(40);
        Random random = new Random(3);
        List<int[]> groups = new ArrayList<>();
        for (int group = 0; group < 60; group++) {
            groups.add(ones(40, random.ints(5, 0, 40).toArray()));
        }
        groups.forEach(group -> allowed.limit(group, 2));
        double[] weights = random.doubles(40, 1, 1.1).toArray();
        assertThrows(
                CancellationException.class,
                () -> Maximum.of(
                        allowed,
                        new Relaxation(allowed),
                        Objective.sum(weights),
                        0,
                        Double.NEGATIVE_INFINITY,
                        PLENTY,
                        () -> true));
    }
}
