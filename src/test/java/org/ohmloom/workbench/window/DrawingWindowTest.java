package org.ohmloom.workbench.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.geom.Point2D;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.draw.Extent;
import org.ohmloom.model.Position;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Workbench;
import org.ohmloom.workbench.canvas.LayoutCanvas;
import org.ohmloom.workbench.canvas.LayoutPane;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;

/** Drawing on the layout with mouse and keyboard in a real window; skipped where there is no display. */
class DrawingWindowTest {

    /** Places are kept to a tenth of a millimetre; a pixel of the window is some tenths. */
    private static final double PIXEL_MM = 0.8;

    @TempDir
    private Path folder;

    private Robot robot;
    private WorkbenchWindow window;

    @BeforeEach
    void openTeachingInAWindow() throws Exception {
        Assumptions.assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display");
        Path file = folder.resolve("teaching.harness.json");
        Files.copy(Path.of("examples", "teaching.harness.json"), file);
        PreferenceStore preferences = PreferenceStore.inMemory(Preferences.DEFAULT.withCautionsRead());
        window = OnEventThread.get(() -> {
            Look.LIGHT.install();
            return Workbench.window(preferences, () -> {});
        });
        robot = BasicRobot.robotWithCurrentAwtHierarchy();
        new FrameFixture(robot, window).show();
        OnEventThread.run(() -> desk().select(Selection.NONE));
        OnEventThread.run(() -> window.view().filing().open(file));
        settle();
        OnEventThread.run(() -> canvas().requestFocusInWindow());
    }

    @AfterEach
    void closeTheWindow() {
        if (robot != null) {
            OnEventThread.run(() -> window.dispose());
            robot.cleanUpWithoutDisposingWindows();
        }
    }

    @Test
    void aComponentIsDraggedToTheGridInOneStepAndBackByUndo() {
        Position before = place("H1");
        drag(middle("H1"), 60, 40, false);
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
        drag(middle("H1"), 90, 50, false);
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
        Extent room = OnEventThread.get(
                        () -> canvas().scene().orElseThrow().bounds("H1").orElseThrow())
                .grown(3);
        Point from = pixel(room.leftMm(), room.topMm());
        Point to = pixel(room.rightMm(), room.bottomMm());
        drag(from, to.x - from.x, to.y - from.y, false);
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

    private void drag(Point from, int dx, int dy, boolean held) {
        robot.moveMouse(canvas(), from);
        robot.pressMouse(MouseButton.LEFT_BUTTON);
        robot.moveMouse(canvas(), from.x + dx / 3, from.y + dy / 3);
        robot.moveMouse(canvas(), from.x + dx / 2, from.y + dy / 2);
        robot.moveMouse(canvas(), from.x + dx, from.y + dy);
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();
    }

    private void press(int key, int... held) {
        for (int each : held) {
            robot.pressKey(each);
        }
        robot.pressAndReleaseKeys(key);
        for (int each : held) {
            robot.releaseKey(each);
        }
        robot.waitForIdle();
    }

    private void settle() {
        OnEventThread.await("results", () -> desk().isCurrent());
        OnEventThread.await("the layout", () -> !pane().isBusy());
    }

    private Point middle(String id) {
        Extent room = OnEventThread.get(
                () -> canvas().scene().orElseThrow().bounds(id).orElseThrow());
        return pixel(room.centre().xMm(), room.centre().yMm());
    }

    private Point pixel(double xMm, double yMm) {
        Point2D at = OnEventThread.get(() -> canvas().transform().toScreen(new org.ohmloom.draw.Point(xMm, yMm)));
        return new Point((int) Math.round(at.getX()), (int) Math.round(at.getY()));
    }

    private Position place(String id) {
        return OnEventThread.get(() -> pane().board().orElseThrow().positions().get(id));
    }

    private List<String> selected() {
        return OnEventThread.get(() -> desk().selection().ids());
    }

    private Optional<String> undoLabel() {
        return OnEventThread.get(() -> session().undoLabel());
    }

    private org.ohmloom.edit.Session session() {
        return desk().document().orElseThrow().session();
    }

    private Desk desk() {
        return window.view().desk();
    }

    private LayoutPane pane() {
        return window.view().layoutPane();
    }

    private LayoutCanvas canvas() {
        return pane().canvas();
    }
}
