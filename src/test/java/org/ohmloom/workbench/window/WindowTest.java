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
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.data.TableCell;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.fixture.JTableFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Workbench;
import org.ohmloom.workbench.canvas.LayoutCanvas;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.sheet.SheetTable;

/** A person with mouse and keyboard at a real window; skipped where there is no display. */
class WindowTest {

    private static final int CONDUCTOR = 3;

    @TempDir
    private Path folder;

    private final CountDownLatch closed = new CountDownLatch(1);
    private Robot robot;
    private FrameFixture frame;
    private WorkbenchWindow window;
    private Path file;

    @BeforeEach
    void openTeachingInAWindow() throws Exception {
        Assumptions.assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display");
        file = folder.resolve("teaching.harness.json");
        Files.copy(Path.of("examples", "teaching.harness.json"), file);
        PreferenceStore preferences = PreferenceStore.inMemory(Preferences.DEFAULT.withCautionsRead());
        window = OnEventThread.get(() -> {
            Look.LIGHT.install();
            return Workbench.window(preferences, closed::countDown);
        });
        robot = BasicRobot.robotWithCurrentAwtHierarchy();
        frame = new FrameFixture(robot, window);
        frame.show();
        OnEventThread.run(() -> desk().select(Selection.NONE));
        OnEventThread.run(() -> window.view().filing().open(file));
        OnEventThread.await("results", () -> desk().isCurrent());
    }

    @AfterEach
    void closeTheWindow() {
        if (robot != null) {
            OnEventThread.run(() -> window.dispose());
            robot.cleanUpWithoutDisposingWindows();
        }
    }

    @Test
    void aWireIsEditedInTheListRecalculatedUndoneAndSaved() throws Exception {
        JTableFixture wires = frame.table("list-Wires");
        double before = worstDropVolts();
        int row = row("W4");
        wires.cell(TableCell.row(row).column(CONDUCTOR)).doubleClick();
        type("6 mm2\n");
        OnEventThread.await(
                "results of the edit", () -> desk().isCurrent() && gauge().equals(Optional.of(Gauge.metric(6))));
        assertTrue(worstDropVolts() < before, "a larger conductor loses less");
        assertEquals("*teaching – Ohmloom", OnEventThread.get(window::getTitle));

        press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        OnEventThread.await("undo", () -> gauge().equals(Optional.of(Gauge.metric(1.5))));
        assertEquals("teaching – Ohmloom", OnEventThread.get(window::getTitle));

        press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        OnEventThread.await("redo", () -> gauge().equals(Optional.of(Gauge.metric(6))));
        press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
        OnEventThread.await(
                "saved", () -> !desk().document().orElseThrow().session().isChanged());
        assertTrue(Files.readString(file).contains("\"gauge\": \"6 mm2\""));
    }

    @Test
    void whatDoesNotFitStaysInTheCellWithItsReason() {
        JTableFixture wires = frame.table("list-Wires");
        wires.cell(TableCell.row(row("W4")).column(CONDUCTOR)).doubleClick();
        type("thick\n");
        assertTrue(OnEventThread.get(() -> window.view().lists().front().isEditing()));
        assertTrue(
                frame.label("list-hint").text().contains("'thick'"),
                frame.label("list-hint").text());
        assertFalse(OnEventThread.get(() -> window.view().lists().commit()));
        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        assertFalse(OnEventThread.get(() -> window.view().lists().front().isEditing()));
        assertEquals(Optional.of(Gauge.metric(1.5)), OnEventThread.get(this::gauge));
    }

    @Test
    void aClickOnTheLayoutSelectsTheRowAndFillsTheInspector() {
        OnEventThread.await("the layout", () -> !window.view().layoutPane().isBusy());
        Point pixel = OnEventThread.get(() -> {
            LayoutCanvas canvas = window.view().layoutPane().canvas();
            Point2D centre = canvas.transform()
                    .toScreen(canvas.scene()
                            .orElseThrow()
                            .bounds("H1")
                            .orElseThrow()
                            .centre());
            return new Point((int) centre.getX(), (int) centre.getY());
        });
        robot.click(window.view().layoutPane().canvas(), pixel);
        OnEventThread.await("the selection", () -> desk().selection().ids().equals(List.of("H1")));
        assertEquals(1, OnEventThread.get(() -> window.view().lists().front().getSelectedRowCount()));
        assertEquals(
                "H1",
                OnEventThread.get(() ->
                        window.view().inspector().inspection().orElseThrow().title()));
    }

    @Test
    void closingAWindowWithoutChangesEndsTheProgram() throws Exception {
        press(KeyEvent.VK_Q, KeyEvent.VK_CONTROL);
        assertTrue(closed.await(10, TimeUnit.SECONDS));
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

    private void type(String text) {
        press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
        robot.enterText(text);
        robot.waitForIdle();
    }

    private Desk desk() {
        return window.view().desk();
    }

    private int row(String wire) {
        return OnEventThread.get(() -> {
            SheetTable table = window.view().lists().front();
            return table.convertRowIndexToView(table.sheet().rowOf(wire));
        });
    }

    private Optional<Gauge> gauge() {
        return desk().harness().orElseThrow().wires().get(new WireId("W4")).gauge();
    }

    private double worstDropVolts() {
        return OnEventThread.get(() -> desk().analysis().orElseThrow().totals().worstDropVolts());
    }
}
