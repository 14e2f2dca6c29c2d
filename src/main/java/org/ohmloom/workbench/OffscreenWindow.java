package org.ohmloom.workbench;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.RepaintManager;
import javax.swing.UIManager;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.CalculationStatus;
import org.ohmloom.workbench.desk.SilentPrompts;
import org.ohmloom.workbench.manual.ManualDesk;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.window.HelpCommands;
import org.ohmloom.workbench.window.WindowActions;
import org.ohmloom.workbench.window.WindowTasks;
import org.ohmloom.workbench.window.WorkbenchView;

/** A window without a screen: it is worked on the event thread, laid out and painted like any other. */
final class OffscreenWindow {

    private static final int PATIENCE_MILLIS = 600_000;
    private static final int SETTLING_ROUNDS = 4;
    private static final int LOOK_AGAIN_MILLIS = 50;
    /** Width of inspector and findings, px. */
    private static final int SIDE = 440;

    private final JRootPane root;
    private final WorkbenchView view;
    private final int width;
    private final int height;

    private OffscreenWindow(JRootPane root, WorkbenchView view, int width, int height) {
        this.root = root;
        this.view = view;
        this.width = width;
        this.height = height;
    }

    /**
     * A window.
     *
     * @param lists share of the height the views get over the lists
     */
    static OffscreenWindow open(Look look, int width, int height, double lists) {
        return onEventThread(() -> {
            look.install();
            PreferenceStore preferences =
                    PreferenceStore.inMemory(Preferences.DEFAULT.withLook(look).withCautionsRead());
            JRootPane root = new JRootPane();
            WorkbenchView[] made = new WorkbenchView[1];
            List<Command> help = HelpCommands.of(() -> root, () -> made[0], new ManualDesk(() -> root));
            made[0] = new WorkbenchView(
                    Workbench.services(preferences, new SilentPrompts()),
                    new WindowTasks(chosen -> {}, desk -> {}, () -> {}, WindowActions.NONE, help));
            root.setJMenuBar(made[0].menus());
            root.setContentPane(made[0]);
            root.setSize(width, height);
            layOut(root);
            made[0].placeDividers(
                    Map.of("side", width - SIDE, "lists", (int) (height * lists), "findings", (int) (height * 0.5)));
            layOut(root);
            return new OffscreenWindow(root, made[0], width, height);
        });
    }

    /** Height of the whole window, px. */
    int height() {
        return height;
    }

    /** Does something in the window and waits until its results and pictures are there. */
    void work(Consumer<WorkbenchView> task) {
        onEventThread(() -> {
            task.accept(view);
            layOut(root);
            return true;
        });
        await(this::isReady);
    }

    /** Asks the window something. */
    <T> T ask(Function<WorkbenchView, T> question) {
        return onEventThread(() -> question.apply(view));
    }

    /** Waits for something else. */
    void await(Predicate<WorkbenchView> condition) {
        for (int waited = 0; waited < PATIENCE_MILLIS; waited += LOOK_AGAIN_MILLIS) {
            if (onEventThread(() -> condition.test(view))) {
                return;
            }
            try {
                Thread.sleep(LOOK_AGAIN_MILLIS);
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("interrupted while waiting for a picture", interrupted);
            }
        }
        throw new IllegalStateException("the window was not ready in " + PATIENCE_MILLIS / 1000 + " s");
    }

    /** Brings a tab of some tabs to the front. */
    void turn(String tabs, int place) {
        work(shown -> turn(shown, tabs, place));
    }

    private static void turn(Container container, String tabs, int place) {
        if (container instanceof JTabbedPane found && tabs.equals(found.getName())) {
            found.setSelectedIndex(place);
        }
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                turn(inner, tabs, place);
            }
        }
    }

    /** The window as it is painted. */
    BufferedImage picture() {
        return picture(shown -> root, width, height);
    }

    /**
     * A part of the window as it is painted, in a size that follows neither the fonts around it nor how often dividers were moved by
     * a status bar that changed its height while results came.
     */
    BufferedImage picture(Function<WorkbenchView, JComponent> part, int across, int down) {
        // Texts learn their height from their width, so further rounds settle what the first moved.
        for (int round = 0; round < SETTLING_ROUNDS; round++) {
            onEventThread(() -> {
                layOut(root);
                size(part.apply(view), across, down);
                return true;
            });
        }
        await(this::isReady);
        return onEventThread(() -> {
            JComponent painted = part.apply(view);
            size(painted, across, down);
            BufferedImage image = new BufferedImage(across, down, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            try {
                g.setColor(UIManager.getColor("Panel.background"));
                g.fillRect(0, 0, across, down);
                // Printing would leave out what is selected.
                RepaintManager.currentManager(painted).setDoubleBufferingEnabled(false);
                painted.paint(g);
            } finally {
                g.dispose();
            }
            return image;
        });
    }

    private static void size(JComponent part, int across, int down) {
        if (part.getWidth() != across || part.getHeight() != down) {
            part.setSize(across, down);
            layOut(part);
        }
    }

    private boolean isReady(WorkbenchView shown) {
        CalculationStatus.Kind kind = shown.desk().status().kind();
        boolean calculated = kind == CalculationStatus.Kind.UP_TO_DATE
                || kind == CalculationStatus.Kind.NOT_POSSIBLE
                || shown.desk().document().isEmpty();
        return calculated
                && !shown.layoutPane().isBusy()
                && !shown.viewTabs().currents().isBusy();
    }

    /** Lays out without a screen, where validating would do nothing. */
    private static void layOut(Container container) {
        // A table puts its head above itself only where there is a screen.
        if (container instanceof JScrollPane scroll
                && scroll.getColumnHeader() == null
                && scroll.getViewport() != null
                && scroll.getViewport().getView() instanceof JTable table) {
            scroll.setColumnHeaderView(table.getTableHeader());
        }
        container.invalidate();
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                layOut(inner);
            }
        }
    }

    private static <T> T onEventThread(Callable<T> task) {
        FutureTask<T> future = new FutureTask<>(task);
        try {
            EventQueue.invokeAndWait(future);
            return future.get();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while taking a picture", interrupted);
        } catch (InvocationTargetException | ExecutionException failed) {
            throw new IllegalStateException("the picture cannot be taken", failed);
        }
    }
}
