package org.ohmloom.workbench;

import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.SolvedBefore;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.SceneLayout;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.store.RecoveryFolder;
import org.ohmloom.tables.WireTables;
import org.ohmloom.workbench.desk.OpenDocuments;
import org.ohmloom.workbench.desk.Prompts;
import org.ohmloom.workbench.desk.Saves;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.desk.SharedCalculation;
import org.ohmloom.workbench.recovery.Recovery;
import org.ohmloom.workbench.recovery.RecoveryPlace;
import org.ohmloom.workbench.settings.Appearance;
import org.ohmloom.workbench.settings.PreferenceNode;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.window.ErrorReport;
import org.ohmloom.workbench.window.RecoveryDialog;
import org.ohmloom.workbench.window.WindowPrompts;
import org.ohmloom.workbench.window.WorkbenchWindow;
import org.ohmloom.workbench.words.Words;

/** Opens the workbench. */
public final class Workbench {

    /** How long a person waits for a save before being asked whether to go on waiting, s. */
    private static final long PATIENCE_SECONDS = 8;

    private Workbench() {}

    /**
     * Opens the window and waits until it is closed. Must not be called where there is no display.
     *
     * @param file a harness file to open; empty shows the start screen
     */
    public static void open(Optional<Path> file) {
        CountDownLatch closed = new CountDownLatch(1);
        EventQueue.invokeLater(() -> show(file, closed::countDown));
        try {
            closed.await();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static void show(Optional<Path> file, Runnable closed) {
        PreferenceStore preferences = PreferenceNode.ofUser();
        Appearance.install(preferences);
        RecoveryFolder folder = RecoveryPlace.ofUser();
        Executor writer = background("recovery");
        // What is still to be forgotten is, before the program ends.
        OpenWindows windows = new OpenWindows(
                preferences, Optional.of(new OpenWindows.Kept(folder, writer)), () -> writer.execute(closed));
        WorkbenchWindow window = windows.make();
        Thread.setDefaultUncaughtExceptionHandler(new ErrorReport(
                () -> KeyboardFocusManager.getCurrentKeyboardFocusManager().getActiveWindow(),
                window.view().journal()));
        window.setVisible(true);
        file.ifPresent(window.view().filing()::open);
        Words words = Words.of("recovery");
        new Recovery(folder, writer, EventQueue::invokeLater)
                .offer(
                        new RecoveryDialog(() -> window),
                        copy -> window.view().filing().put(copy, words.get("restored", copy.name())),
                        () -> window.view().book().get("compare-saved").run(),
                        sentence -> new WindowPrompts(() -> window).problem(words.get("failed.title"), sentence));
    }

    private static Executor background(String name) {
        return Executors.newSingleThreadExecutor(task -> thread(name, task));
    }

    private static Thread thread(String name, Runnable task) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        return thread;
    }

    /** A window that is not shown yet. */
    public static WorkbenchWindow window(PreferenceStore preferences, Runnable closed) {
        return new OpenWindows(preferences, Optional.empty(), closed).make();
    }

    /** What a workbench is built on in earnest. */
    static Services services(PreferenceStore preferences, Prompts prompts) {
        WireTables tables = WireTables.bundled();
        SolvedBefore before = new SolvedBefore();
        SceneFonts fonts = SceneFonts.load().in(Words.language());
        SceneLayout layout = new SceneLayout(fonts);
        // A thread for each: what is read from a folder out of reach never ends, and must not hold what is read
        // elsewhere.
        Executor reader = task -> thread("reader", task).start();
        return new Services(
                new SharedCalculation(
                        (question, cancel, soFar) -> Analyst.analyse(
                                question.harness(),
                                question.file().map(tables::beside).orElse(tables),
                                cancel,
                                before,
                                soFar),
                        task -> thread("analysis", task).start()),
                question -> layout.layOut(
                        question.harness(),
                        question.analysis(),
                        question.view().state(),
                        question.view().options(),
                        question.aspectRatio()),
                new ScenePainter(fonts),
                preferences,
                prompts,
                reader,
                EventQueue::invokeLater,
                new OpenDocuments(),
                new Saves(
                        task -> thread("writer", task).start(),
                        EventQueue::invokeLater,
                        CompletableFuture.delayedExecutor(
                                PATIENCE_SECONDS, TimeUnit.SECONDS, EventQueue::invokeLater)));
    }
}
