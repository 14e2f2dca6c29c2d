package org.ohmloom.workbench.window;

import java.awt.AWTException;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.draw.Scene;
import org.ohmloom.edit.Session;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Workbench;
import org.ohmloom.workbench.canvas.LayoutCanvas;
import org.ohmloom.workbench.canvas.LayoutPane;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;

/** A hand at the layout of a real window: mouse and keys only; what is on the screen is read. Skipped where there is no display. */
abstract class HandAtTheLayout {

    @TempDir
    Path folder;

    Robot robot;

    /** Knows when the screen has handed on every event, which takes a while where others keep the processor busy. */
    private java.awt.Robot delivery;

    WorkbenchWindow window;
    FrameFixture frame;

    @BeforeEach
    void openAWindow() throws AWTException {
        Assumptions.assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display");
        PreferenceStore preferences = PreferenceStore.inMemory(Preferences.DEFAULT.withCautionsRead());
        window = OnEventThread.get(() -> {
            Look.LIGHT.install();
            return Workbench.window(preferences, () -> {});
        });
        delivery = new java.awt.Robot();
        robot = BasicRobot.robotWithCurrentAwtHierarchy();
        frame = new FrameFixture(robot, window);
        frame.show();
        OnEventThread.run(() -> desk().select(Selection.NONE));
    }

    @AfterEach
    void closeTheWindow() {
        if (robot != null) {
            OnEventThread.run(() -> window.dispose());
            robot.cleanUpWithoutDisposingWindows();
        }
    }

    void open(String example) throws IOException {
        Path file = folder.resolve(example + ".harness.json");
        Files.copy(Path.of("examples", example + ".harness.json"), file);
        OnEventThread.run(() -> window.view().filing().open(file));
        OnEventThread.await("the file", () -> desk().document().isPresent());
        // the numbers come onto the layout when they are there, and it may be fitted anew
        OnEventThread.await("results", () -> desk().isCurrent());
        settle();
        OnEventThread.run(() -> canvas().requestFocusInWindow());
    }

    void drag(Point from, int dx, int dy) {
        robot.moveMouse(canvas(), from);
        robot.pressMouse(MouseButton.LEFT_BUTTON);
        robot.moveMouse(canvas(), from.x + dx / 3, from.y + dy / 3);
        robot.moveMouse(canvas(), from.x + dx / 2, from.y + dy / 2);
        robot.moveMouse(canvas(), from.x + dx, from.y + dy);
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        delivery.waitForIdle();
    }

    void press(int key, int... held) {
        for (int each : held) {
            robot.pressKey(each);
        }
        robot.pressAndReleaseKeys(key);
        for (int each : held) {
            robot.releaseKey(each);
        }
        delivery.waitForIdle();
    }

    /**
     * Waits until what the hand did has come to the window and the layout stands: the numbers come onto it when they are there, and
     * it may be moved then.
     */
    void settle() {
        delivery.waitForIdle();
        OnEventThread.await(
                "the layout", () -> !pane().isBusy() && (desk().harness().isEmpty() || desk().isCurrent()));
    }

    Point middle(String id) {
        return pixel(scene -> scene.bounds(id).orElseThrow().centre());
    }

    /** Where a point of the layout is on the screen, both asked at the same moment. */
    Point pixel(Function<Scene, org.ohmloom.draw.Point> place) {
        Point2D at = OnEventThread.get(
                () -> canvas().transform().toScreen(place.apply(canvas().scene().orElseThrow())));
        return new Point((int) Math.round(at.getX()), (int) Math.round(at.getY()));
    }

    Position place(String id) {
        return OnEventThread.get(() -> pane().board().orElseThrow().positions().get(id));
    }

    List<String> selected() {
        return OnEventThread.get(() -> desk().selection().ids());
    }

    Optional<String> undoLabel() {
        return OnEventThread.get(() -> session().undoLabel().map(Text::english));
    }

    Session session() {
        return desk().document().orElseThrow().session();
    }

    Desk desk() {
        return window.view().desk();
    }

    LayoutPane pane() {
        return window.view().layoutPane();
    }

    LayoutCanvas canvas() {
        return pane().canvas();
    }

    Harness harness() {
        return OnEventThread.get(() -> desk().harness().orElseThrow());
    }

    /** What the line above the layout says. */
    String hint() {
        return frame.label("tool-hint").text();
    }
}
