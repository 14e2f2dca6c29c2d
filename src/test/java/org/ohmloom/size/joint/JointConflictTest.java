package org.ohmloom.size.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Budgets that cannot all be kept are named, and the choice keeps the others. */
class JointConflictTest {

    private static Budget budget(String id, double volts, int curve) {
        return new Budget(id, volts, List.of(new Share(0, curve, 1)));
    }

    @Test
    void aBudgetNoOptionKeepsIsLeftOutOfTheChoice() {
        // 1 A through 3, 2 or 1 ohm: never within 0.5 V, and within 2 V from the second on
        Part part = Part.of("W1", new double[] {1, 2, 4}, new double[] {3, 2, 1});
        JointAnswer answer = JointSolver.solve(
                JointProblem.of(List.of(part), List.of(budget("tight", 0.5, 0), budget("wide", 2, 0))));
        assertEquals(List.of(1), answer.options());
        assertEquals(2, answer.cost());
        assertEquals(List.of("tight"), answer.unmet());
        assertTrue(answer.isProvenLeast());
    }

    /** A thicker wire that runs hotter in one state: each budget can be kept alone, no choice keeps both. */
    @Test
    void whereBudgetsContradictEachOtherTheDearestIsTakenAndWhatItBreaksIsNamed() {
        Part part = Part.of("W1", new double[] {1, 3}, new double[] {2, 1}, new double[] {1, 2});
        JointAnswer answer =
                JointSolver.solve(JointProblem.of(List.of(part), List.of(budget("night", 1, 0), budget("day", 1, 1))));
        assertEquals(List.of(1), answer.options());
        assertEquals(List.of("day"), answer.unmet());
        assertEquals(3, answer.cost());
        assertEquals(1, answer.lowerBound(), "the cheapest there is");
        assertEquals(2.0 / 3, answer.gapRatio());
        assertFalse(answer.isProvenLeast());
    }

    @Test
    void nothingToChooseCostsNothing() {
        Part part = Part.of("W1", new double[] {0}, new double[] {1});
        JointAnswer answer = JointSolver.solve(JointProblem.of(List.of(part), List.of(budget("B", 1, 0))));
        assertEquals(List.of(0), answer.options());
        assertEquals(0, answer.gapRatio());
        assertEquals(List.of(), answer.unmet(), "just kept: 1 A x 1 ohm");
    }
}
