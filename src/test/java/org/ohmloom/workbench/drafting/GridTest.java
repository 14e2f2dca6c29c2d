package org.ohmloom.workbench.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Position;

/** Where a place is drawn to. */
class GridTest {

    private static final Grid FIVE = new Grid(true, 5);

    @Test
    void aPlaceGoesToTheNearestCrossing() {
        // 12.4 mm is nearer to 10 than to 15; -3 mm is nearer to -5 than to 0.
        assertEquals(
                new Position(10, -5),
                FIVE.snap(new Position(12.4, -3), List.of(), 1, false).at());
    }

    @Test
    void whatStandsNearlyLevelWithAnotherThingGoesLevelWithIt() {
        Grid.Snap snap = FIVE.snap(new Position(12.4, 40), List.of(new Position(12.9, 77)), 1, false);
        assertEquals(new Position(12.9, 40), snap.at());
        assertEquals(OptionalDouble.of(12.9), snap.guideX());
        assertTrue(snap.guideY().isEmpty());
    }

    @Test
    void withTheGridOffOrTheKeyHeldAPlaceIsKeptToATenth() {
        Position raw = new Position(12.437, -3.062);
        assertEquals(
                new Position(12.4, -3.1), FIVE.snap(raw, List.of(raw), 1, true).at());
        assertEquals(
                new Position(12.4, -3.1),
                FIVE.switched().snap(raw, List.of(), 1, false).at());
    }

    @Test
    void anArrowKeyMovesByTheGridOrByAMillimetre() {
        assertEquals(5, FIVE.stepMm(false));
        assertEquals(1, FIVE.switched().stepMm(false));
    }
}
