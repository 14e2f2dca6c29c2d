package org.ohmloom.edit.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.MoveOnBoard;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.words.Text;

/** Where things stand on the board. */
class ArrangementTest {

    /** A card 20 wide from 0 to 20 with its connector, a point at 50, a card 40 wide from 80 to 120. */
    private static final Arrangement THREE = new Arrangement(List.of(
            new Footprint(Set.of("A", "XA"), new Position(10, 10), 20, 8),
            new Footprint(Set.of("B"), new Position(50, 30), 0, 0),
            new Footprint(Set.of("C"), new Position(100, 60), 40, 16)));

    private static Position at(double xMm, double yMm) {
        return new Position(xMm, yMm);
    }

    @Test
    void leftSidesComeToTheLeftmostAndRightSidesToTheRightmost() {
        assertEquals(
                Map.of("A", at(10, 10), "XA", at(10, 10), "B", at(0, 30), "C", at(20, 60)),
                THREE.aligned(Arrangement.Side.LEFT));
        assertEquals(
                Map.of("A", at(110, 10), "XA", at(110, 10), "B", at(120, 30), "C", at(100, 60)),
                THREE.aligned(Arrangement.Side.RIGHT));
    }

    @Test
    void topsBottomsAndMiddlesAreThoseOfTheRoomAllTake() {
        // from 10 - 4 = 6 to 60 + 8 = 68: the middle is 37
        assertEquals(at(10, 37), THREE.aligned(Arrangement.Side.MIDDLE).get("A"));
        assertEquals(at(100, 14), THREE.aligned(Arrangement.Side.TOP).get("C"));
        assertEquals(at(50, 68), THREE.aligned(Arrangement.Side.BOTTOM).get("B"));
        assertEquals(at(60, 30), THREE.aligned(Arrangement.Side.CENTRE).get("B"));
    }

    @Test
    void sharedOutTheGapsAreEqualAndTheOutermostStay() {
        // 0 to 120 holds 20 + 0 + 40: two gaps of 30, so the point stands at 20 + 30 = 50 and the card from 80
        assertEquals(at(50, 30), THREE.sharedOut(true).get("B"));
        // upright 6 to 68 holds 8 + 0 + 16: two gaps of 19, so the point stands at 14 + 19 = 33
        assertEquals(at(50, 33), THREE.sharedOut(false).get("B"));
        assertEquals(at(10, 10), THREE.sharedOut(false).get("XA"));
        assertEquals(at(100, 60), THREE.sharedOut(false).get("C"));
        assertTrue(new Arrangement(List.of()).sharedOut(true).isEmpty());
    }

    @Test
    void mirroredTwiceAndTurnedFourTimesEverythingIsWhereItWas() {
        assertEquals(at(100, 10), THREE.mirrored(true).get("A"));
        assertEquals(at(10, 60), THREE.mirrored(false).get("XA"));
        // about 55, 35: the card at 10, 10 is 45 to the left and 25 above; a quarter clockwise puts it 25 right and 45
        // above
        assertEquals(at(80, -10), THREE.turned(true).get("A"));
        Position there = at(10, 10);
        Arrangement now = THREE;
        for (int k = 0; k < 4; k++) {
            var turned = now.turned(true);
            now = new Arrangement(List.of(
                    new Footprint(Set.of("A", "XA"), turned.get("A"), 20, 8),
                    new Footprint(Set.of("B"), turned.get("B"), 0, 0),
                    new Footprint(Set.of("C"), turned.get("C"), 40, 16)));
            there = turned.get("A");
        }
        assertEquals(at(10, 10), there);
        assertEquals(THREE.turned(false), inverse(THREE));
    }

    /** Three quarters clockwise are one the other way. */
    private static Map<String, Position> inverse(Arrangement of) {
        Map<String, Position> positions = new TreeMap<>();
        of.turned(true).forEach((id, at) -> positions.put(id, new Position(2 * 55 - at.xMm(), 2 * 35 - at.yMm())));
        return positions;
    }

    @Test
    void onAGridMiddlesComeToTheNearestCrossing() {
        assertEquals(at(100, 60), Arrangement.snapped(at(98.1, 62.4), 5));
        assertEquals(at(10, 10), THREE.onGrid(5).get("A"));
        assertEquals(at(48, 32), THREE.onGrid(16).get("B"));
    }

    @Test
    void whatTheBoardLaidOutByItselfStaysWhereItIsOnceSomethingIsMoved() throws HarnessFileException {
        Harness harness = DraftingTest.example("teaching");
        TreeMap<String, Position> places = new TreeMap<>(Map.of("B1", at(1, 2), "BT1", at(3, 4), "GONE", at(5, 6)));
        MoveOnBoard move = new MoveOnBoard(Text.of("Move H1"), new TreeMap<>(Map.of("H1", at(7, 8))));
        Harness after = new Pinned(places, move).apply(harness);
        assertEquals(harness.layout().get("B1"), after.layout().get("B1"));
        assertEquals(at(3, 4), after.layout().get("BT1"));
        assertEquals(at(7, 8), after.layout().get("H1"));
        assertTrue(after.layout().get("GONE") == null);
        MoveOnBoard nothing = new MoveOnBoard(Text.of("Move nothing"), new TreeMap<>());
        assertSame(harness, new Pinned(places, nothing).apply(harness));
    }
}
