package org.ohmloom.workbench.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.assertj.swing.core.MouseButton;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Scene;
import org.ohmloom.model.Position;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.desk.Selection;

/** Selecting and moving on the layout with mouse and keyboard in a real window. */
class DrawingWindowTest extends HandAtTheLayout {

    @BeforeEach
    void openTeaching() throws Exception {
        open("teaching");
    }

    @Test
    void aComponentIsDraggedToTheGridInOneStepAndBackByUndo() {
        Position before = place("H1");
        drag(middle("H1"), 60, 40);
        settle();
        Position after = place("H1");
        assertEquals(0, after.xMm() % 5, 1e-9, "on the grid of 5 mm to begin with: " + after);
        assertEquals(0, after.yMm() % 5, 1e-9, "on the grid of 5 mm to begin with: " + after);
        assertTrue(after.xMm() > before.xMm() + 5 && after.yMm() > before.yMm() + 3, before + " to " + after);
        assertEquals(List.of("H1"), selected());
        assertEquals(Optional.of("Move H1"), undoLabel());
        assertEquals(1, OnEventThread.get(() -> session().stepsDone()));
        press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        settle();
        assertEquals(before, place("H1"));
    }

    @Test
    void whatIsNotDraggedStaysWhereItIsOnTheScreen() {
        Point battery = middle("BT1");
        drag(middle("H1"), 90, 50);
        settle();
        Point after = middle("BT1");
        assertEquals(battery.x, after.x, 2);
        assertEquals(battery.y, after.y, 2);
    }

    @Test
    void escapeWhileDraggingChangesNothing() {
        Point from = middle("H1");
        robot.moveMouse(canvas(), from);
        robot.pressMouse(MouseButton.LEFT_BUTTON);
        robot.moveMouse(canvas(), from.x + 20, from.y + 10);
        robot.moveMouse(canvas(), from.x + 50, from.y + 30);
        press(KeyEvent.VK_ESCAPE);
        robot.moveMouse(canvas(), from.x + 60, from.y + 30);
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();
        assertFalse(OnEventThread.get(() -> session().isChanged()));
    }

    @Test
    void aRectangleSelectsWhatLiesWithinAndTheArrowsNudgeItAllAsOneStep() {
        // from the empty lower right corner: at the left the plug X1 touches the heater, and a drag that began there
        // would move it
        Point from = pixel(scene -> new org.ohmloom.draw.Point(
                around(scene, "H1").rightMm(), around(scene, "H1").bottomMm()));
        Point to = pixel(scene -> new org.ohmloom.draw.Point(
                around(scene, "H1").leftMm(), around(scene, "H1").topMm()));
        drag(from, to.x - from.x, to.y - from.y);
        assertTrue(selected().contains("H1"), selected().toString());
        assertFalse(selected().contains("BT1"), selected().toString());
        Position before = place("H1");
        press(KeyEvent.VK_RIGHT);
        press(KeyEvent.VK_RIGHT);
        press(KeyEvent.VK_DOWN);
        settle();
        assertEquals(before.xMm() + 10, place("H1").xMm(), 0.11);
        assertEquals(before.yMm() + 5, place("H1").yMm(), 0.11);
        assertEquals(1, OnEventThread.get(() -> session().stepsDone()));
    }

    @Test
    void aBreakoutTakesItsCardsAlong() {
        BoardPlaces places = OnEventThread.get(() -> pane().board().orElseThrow());
        BoardPlaces.CardPlace card = places.cards().stream()
                .filter(each -> each.footprint().ids().contains("H1"))
                .findFirst()
                .orElseThrow();
        String breakout = card.breakout().orElseThrow();
        OnEventThread.run(() -> desk().select(Selection.of(List.of(breakout))));
        Position before = place("H1");
        press(KeyEvent.VK_DOWN, KeyEvent.VK_SHIFT);
        settle();
        assertEquals(before.yMm() + 25, place("H1").yMm(), 0.11);
        assertEquals(before.xMm(), place("H1").xMm(), 0.11);
    }

    @Test
    void controlAndClickAddsAndControlAndASelectsEverything() {
        robot.click(canvas(), middle("H1"));
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.click(canvas(), middle("BT1"));
        robot.releaseKey(KeyEvent.VK_CONTROL);
        robot.waitForIdle();
        assertEquals(Set.of("H1", "BT1"), Set.copyOf(selected()));
        press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
        assertTrue(
                selected().containsAll(List.of("H1", "BT1", "W4")), selected().toString());
    }

    @Test
    void theMiddleButtonPansAndTheWheelZooms() {
        Point before = middle("BT1");
        robot.moveMouse(canvas(), before);
        robot.pressMouse(MouseButton.MIDDLE_BUTTON);
        robot.moveMouse(canvas(), before.x + 15, before.y + 5);
        robot.moveMouse(canvas(), before.x + 30, before.y + 20);
        robot.releaseMouse(MouseButton.MIDDLE_BUTTON);
        robot.waitForIdle();
        assertEquals(before.x + 30, middle("BT1").x, 2);
        assertEquals(before.y + 20, middle("BT1").y, 2);
        double scale = OnEventThread.get(() -> canvas().transform().scale());
        robot.rotateMouseWheel(canvas(), -2);
        robot.waitForIdle();
        assertTrue(OnEventThread.get(() -> canvas().transform().scale()) > scale);
        assertFalse(OnEventThread.get(() -> session().isChanged()));
    }

    private static Extent around(Scene scene, String id) {
        return scene.bounds(id).orElseThrow().grown(3);
    }
}
