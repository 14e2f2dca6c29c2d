package org.ohmloom.workbench.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JPanel;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.data.TableCell;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Workbench;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.sheet.SheetTable;
import org.ohmloom.workbench.window.WorkbenchWindow;

/** A change tried by keyboard and mouse at a real window; skipped where there is no display. */
class WhatIfWindowTest {

    private static final int CONDUCTOR = 3;
    private static final WireId W5 = new WireId("W5");

    @TempDir
    private Path folder;

    private Robot robot;
    private FrameFixture frame;
    private WorkbenchWindow window;

    @BeforeEach
    void openTeachingInAWindow() throws Exception {
        Assumptions.assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display");
        Path file = folder.resolve("teaching.harness.json");
        Files.copy(Path.of("examples", "teaching.harness.json"), file);
        window = OnEventThread.get(() -> {
            Look.LIGHT.install();
            return Workbench.window(PreferenceStore.inMemory(Preferences.DEFAULT.withCautionsRead()), () -> {});
        });
        robot = BasicRobot.robotWithCurrentAwtHierarchy();
        frame = new FrameFixture(robot, window);
        frame.show();
        OnEventThread.run(() -> window.view().filing().open(file));
        OnEventThread.await("results", () -> desk().isWhole());
    }

    @AfterEach
    void closeTheWindow() {
        if (robot != null) {
            OnEventThread.run(() -> window.dispose());
            robot.cleanUpWithoutDisposingWindows();
        }
    }

    @Test
    void aSizeIsTriedSeenKeptAndTakenBackByKeys() {
        press(KeyEvent.VK_T, KeyEvent.VK_CONTROL);
        JPanel band = frame.panel("side-copy-band").requireVisible().target();
        assertEquals(
                "You are working on a side copy of teaching: teaching stays as it is until you keep the copy",
                frame.label("side-copy-title").text());
        assertEquals("teaching (side copy) – Ohmloom", OnEventThread.get(window::getTitle));

        frame.table("list-Wires").cell(TableCell.row(row()).column(CONDUCTOR)).doubleClick();
        press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
        robot.enterText("2.5 mm2\n");
        OnEventThread.await(
                "what it changes",
                () -> frame.label("side-copy-effect").target().getText().contains("copper in wires to be made"));
        assertEquals(Optional.of(Gauge.metric(1.5)), OnEventThread.get(() -> desk().document()
                .orElseThrow()
                .original()
                .orElseThrow()
                .harness()
                .wires()
                .get(W5)
                .gauge()));
        frame.button("band-study-what-if").click();
        OnEventThread.await(
                "the view", () -> frame.table("what-if-Numbers").target().getRowCount() > 0);

        press(KeyEvent.VK_K, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        OnEventThread.await("kept", () -> !desk().isSideCopy());
        assertFalse(OnEventThread.get(band::isShowing));
        assertEquals("*teaching – Ohmloom", OnEventThread.get(window::getTitle));
        assertEquals(Optional.of(Gauge.metric(2.5)), OnEventThread.get(this::size));
        press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        OnEventThread.await("taken back", () -> size().equals(Optional.of(Gauge.metric(1.5))));

        press(KeyEvent.VK_T, KeyEvent.VK_CONTROL);
        OnEventThread.await("another copy", () -> desk().isSideCopy());
        press(KeyEvent.VK_BACK_SPACE, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        OnEventThread.await("dropped", () -> !desk().isSideCopy());
        assertTrue(OnEventThread.get(() -> desk().isWhole()));
    }

    private Optional<Gauge> size() {
        return desk().harness().orElseThrow().wires().get(W5).gauge();
    }

    private Desk desk() {
        return window.view().desk();
    }

    private int row() {
        return OnEventThread.get(() -> {
            SheetTable table = window.view().lists().front();
            return table.convertRowIndexToView(table.sheet().rowOf("W5"));
        });
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
}
