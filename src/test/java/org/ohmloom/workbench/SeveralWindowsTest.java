package org.ohmloom.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.awt.GraphicsEnvironment;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.event.KeyEvent;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.TransferHandler;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.model.WireId;
import org.ohmloom.workbench.desk.DiskWatch;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.window.WorkbenchWindow;
import org.ohmloom.workbench.words.TypedEdits;

/** Several windows of one program, files dropped on them and files changed behind them; skipped where there is no display. */
class SeveralWindowsTest {

    @TempDir
    private Path folder;

    private final CountDownLatch allClosed = new CountDownLatch(1);
    private OpenWindows windows;
    private Robot robot;
    private WorkbenchWindow first;
    private Path file;

    @BeforeEach
    void openTeachingInAWindow() throws Exception {
        Assumptions.assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display");
        file = copied("teaching");
        windows = OnEventThread.get(() -> {
            Look.LIGHT.install();
            return new OpenWindows(
                    PreferenceStore.inMemory(Preferences.DEFAULT.withCautionsRead()),
                    Optional.empty(),
                    allClosed::countDown);
        });
        first = OnEventThread.get(() -> windows.make());
        robot = BasicRobot.robotWithCurrentAwtHierarchy();
        new FrameFixture(robot, first).show();
        OnEventThread.run(() -> first.view().filing().open(file));
        OnEventThread.await("the file", () -> first.view().desk().document().isPresent());
    }

    private Path copied(String example) throws Exception {
        Path copy = folder.resolve(example + ".harness.json");
        Files.copy(Path.of("examples", example + ".harness.json"), copy);
        return copy;
    }

    @AfterEach
    void closeTheWindows() {
        if (robot != null) {
            OnEventThread.run(() -> windows.all().forEach(WorkbenchWindow::dispose));
            robot.cleanUpWithoutDisposingWindows();
        }
    }

    @Test
    void theSameFileInTwoWindowsIsOneHarnessAndQuittingClosesBoth() throws Exception {
        OnEventThread.run(() -> first.setSize(1000, 700));
        OnEventThread.run(() -> first.view().placeDividers(Map.of("side", 640)));
        press(KeyEvent.VK_N, KeyEvent.VK_CONTROL, KeyEvent.VK_ALT);
        OnEventThread.await("another window", () -> windows.all().size() == 2 && second().isActive());
        assertEquals(
                OnEventThread.get(() -> first.view().dividerPlaces().get("side")),
                OnEventThread.get(() -> second().view().dividerPlaces().get("side")),
                "divided as the one it was opened from");
        OnEventThread.run(() -> second().view().filing().open(file));
        assertEquals("teaching – Ohmloom (also in another window)", OnEventThread.get(second()::getTitle));
        assertEquals("teaching – Ohmloom (also in another window)", OnEventThread.get(first::getTitle));
        OnEventThread.run(() -> second().view().desk().apply(TypedEdits.conductor(List.of(new WireId("W4")), "6")));
        assertEquals("*teaching – Ohmloom (also in another window)", OnEventThread.get(first::getTitle));
        press(KeyEvent.VK_W, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        OnEventThread.await("one window", () -> windows.all().equals(List.of(first)));
        assertEquals("*teaching – Ohmloom", OnEventThread.get(first::getTitle));

        OnEventThread.await("the first in front", () -> first.isActive());
        press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        OnEventThread.await("undo", () -> first.getTitle().equals("teaching – Ohmloom"));
        OnEventThread.run(() -> first.view().book().get("same-in-window").run());
        OnEventThread.await("both again", () -> windows.all().size() == 2 && second().isActive());
        press(KeyEvent.VK_Q, KeyEvent.VK_CONTROL);
        assertTrue(allClosed.await(10, TimeUnit.SECONDS));
        assertEquals(List.of(), OnEventThread.get(() -> windows.all()));
    }

    @Test
    void filesDroppedAnywhereOnTheWindowAreOpenedTheFirstHereTheOthersBeside() throws Exception {
        Path other = copied("star-ground");
        assertEquals(List.of(), OnEventThread.get(() -> refusing(first.view())));
        TransferHandler handler = first.view().getTransferHandler();
        Transferable files = new DroppedFiles(List.of(other.toFile(), file.toFile()));
        assertTrue(
                OnEventThread.get(() -> handler.importData(new TransferHandler.TransferSupport(first.view(), files))));
        OnEventThread.await(
                "both files",
                () -> windows.all().size() == 2
                        && name(first).equals("star-ground")
                        && name(second()).equals("teaching"));
        assertFalse(OnEventThread.get(() -> first.view().filing().isElsewhere()));
    }

    @Test
    void anotherLookTakesTheDropOfFilesFromNoWindow() throws Exception {
        OnEventThread.run(() -> first.view().book().get("new-window").run());
        OnEventThread.await("another window", () -> windows.all().size() == 2);
        OnEventThread.run(() -> first.view().book().get("look").run());
        assertEquals(List.of(), OnEventThread.get(() -> refusing(first.view())));
        assertEquals(List.of(), OnEventThread.get(() -> refusing(second().view())));
    }

    /** What has a drop target of its own and would keep files from the window; fields that take text may. */
    private static List<String> refusing(Container within) {
        List<String> found = new ArrayList<>();
        for (Component each : within.getComponents()) {
            boolean takesText = each instanceof JTextComponent text && text.isEditable();
            if (each.getDropTarget() != null && !takesText) {
                found.add(each.getClass().getSimpleName() + " " + each.getName());
            }
            if (each instanceof Container container) {
                found.addAll(refusing(container));
            }
        }
        return found;
    }

    /** Files as a file view hands them over. */
    private record DroppedFiles(List<File> files) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) {
            return files;
        }
    }

    @Test
    void aFileChangedBehindTheWindowIsToldWhenTheWindowIsActivated() throws Exception {
        FrameFixture frame = new FrameFixture(robot, first);
        Files.writeString(file, Files.readString(file).replace("Two-load teaching harness", "Changed by another"));
        press(KeyEvent.VK_N, KeyEvent.VK_CONTROL, KeyEvent.VK_ALT);
        OnEventThread.await("another window", () -> windows.all().size() == 2 && second().isActive());
        press(KeyEvent.VK_W, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        OnEventThread.await("told", () -> first.view().filing().watch().standing() == DiskWatch.Standing.CHANGED);
        frame.panel("disk-band").requireVisible();
        frame.button("disk-read-again").click();
        OnEventThread.await("read", () -> first.view()
                .desk()
                .harness()
                .orElseThrow()
                .titleBlock()
                .title()
                .equals("Changed by another"));
        assertEquals("teaching – Ohmloom", OnEventThread.get(first::getTitle));
        assertSame(first, windows.all().get(0));
    }

    private WorkbenchWindow second() {
        return windows.all().get(1);
    }

    private static String name(WorkbenchWindow window) {
        return window.view().desk().document().map(each -> each.name()).orElse("");
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
