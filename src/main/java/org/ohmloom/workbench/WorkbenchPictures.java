package org.ohmloom.workbench;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javax.imageio.ImageIO;
import javax.swing.JRootPane;
import javax.swing.RepaintManager;
import org.ohmloom.workbench.bench.Studies;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.CalculationStatus;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.desk.SilentPrompts;
import org.ohmloom.workbench.manual.ManualDesk;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.study.CurrentsPane;
import org.ohmloom.workbench.study.DutyRangeStudy;
import org.ohmloom.workbench.study.ReturnsPane;
import org.ohmloom.workbench.study.Study;
import org.ohmloom.workbench.window.HelpCommands;
import org.ohmloom.workbench.window.WindowActions;
import org.ohmloom.workbench.window.WindowTasks;
import org.ohmloom.workbench.window.WorkbenchView;

/**
 * Takes the pictures of the window that the documentation shows. Needs no display:
 * {@code mvn -q compile exec:java -Dexec.mainClass=org.ohmloom.workbench.WorkbenchPictures -Dexec.args=src/docs/pictures}.
 */
public final class WorkbenchPictures {

    private static final String EXAMPLE = "rescue-pickup";
    private static final int PATIENCE_MILLIS = 60_000;
    private static final int SETTLING_ROUNDS = 4;
    private static final int LOOK_AGAIN_MILLIS = 50;

    private final int width;
    private final int height;

    private WorkbenchPictures(int width, int height) {
        this.width = width;
        this.height = height;
    }

    /**
     * Writes {@code window-light.png}, {@code window-dark.png}, {@code start.png} and one picture of each study.
     *
     * @param args the folder to write to, and optionally a width and a height in px
     * @throws IOException when a picture cannot be written
     */
    public static void main(String[] args) throws IOException {
        System.setProperty("java.awt.headless", "true");
        Path folder = Path.of(args.length > 0 ? args[0] : "src/docs/pictures");
        int width = args.length > 2 ? Integer.parseInt(args[1]) : 1600;
        int height = args.length > 2 ? Integer.parseInt(args[2]) : 1000;
        new WorkbenchPictures(width, height).take(folder);
    }

    private void take(Path folder) throws IOException {
        Files.createDirectories(folder);
        for (Look look : Look.values()) {
            String name = "window-" + look.name().toLowerCase(Locale.ROOT);
            write(folder.resolve(name + ".png"), window(look, Optional.of(EXAMPLE), Optional.empty()));
        }
        write(
                folder.resolve("study-" + CurrentsPane.KEY + ".png"),
                window(Look.LIGHT, Optional.of(EXAMPLE), Optional.of(CurrentsPane.KEY)));
        for (Study<?> study : Studies.ALL) {
            Look look = Studies.ALL.indexOf(study) % 2 == 0 ? Look.LIGHT : Look.DARK;
            BufferedImage picture = window(look, Optional.of(EXAMPLE), Optional.of(study.key()));
            write(folder.resolve("study-" + study.key() + ".png"), picture);
        }
        write(
                folder.resolve("study-" + ReturnsPane.KEY + ".png"),
                window(Look.DARK, Optional.of(EXAMPLE), Optional.of(ReturnsPane.KEY)));
        write(folder.resolve("start.png"), window(Look.LIGHT, Optional.empty(), Optional.empty()));
    }

    private BufferedImage window(Look look, Optional<String> example, Optional<String> study) {
        Stage stage = onEventThread(() -> stage(look));
        if (example.isPresent()) {
            onEventThread(() -> {
                stage.view().filing().openExample(example.get());
                return true;
            });
            waitFor(() -> isReady(stage.view()));
            onEventThread(() -> {
                layOut(stage.root());
                choose(stage.view());
                study.ifPresent(key -> stage.view().viewTabs().showStudy(key));
                return true;
            });
            // The layout is drawn anew for the size the canvas has now.
            waitFor(() -> isReady(stage.view()));
            if (study.equals(Optional.of(DutyRangeStudy.KEY))) {
                waitFor(() -> stage.view().desk().dutySteps().isPresent());
            }
        }
        // Texts learn their height from their width, so further rounds settle what the first moved.
        for (int round = 0; round < SETTLING_ROUNDS; round++) {
            onEventThread(() -> {
                layOut(stage.root());
                return true;
            });
        }
        return onEventThread(() -> picture(stage.root()));
    }

    /** A window without a screen. */
    private record Stage(JRootPane root, WorkbenchView view) {}

    private Stage stage(Look look) {
        look.install();
        PreferenceStore preferences =
                PreferenceStore.inMemory(Preferences.DEFAULT.withLook(look).withCautionsRead());
        JRootPane root = new JRootPane();
        WorkbenchView[] made = new WorkbenchView[1];
        List<Command> help = HelpCommands.of(() -> null, () -> made[0], new ManualDesk(() -> root));
        made[0] = new WorkbenchView(
                Workbench.services(preferences, new SilentPrompts()),
                new WindowTasks(chosen -> {}, desk -> {}, () -> {}, WindowActions.NONE, help));
        root.setJMenuBar(made[0].menus());
        root.setContentPane(made[0]);
        root.setSize(width, height);
        layOut(root);
        made[0].placeDividers(
                Map.of("side", width - 440, "lists", (int) (height * 0.5), "findings", (int) (height * 0.5)));
        layOut(root);
        return new Stage(root, made[0]);
    }

    /** Selects a wire that has something to tell. */
    private static void choose(WorkbenchView view) {
        view.desk()
                .analysis()
                .flatMap(results -> results.ratings().values().stream()
                        .max((one, other) -> Double.compare(one.worstDropVolts(), other.worstDropVolts())))
                .ifPresent(rating -> view.desk()
                        .select(Selection.of(List.of(rating.wire().id().value()))));
    }

    private static boolean isReady(WorkbenchView view) {
        CalculationStatus.Kind kind = view.desk().status().kind();
        boolean calculated = kind == CalculationStatus.Kind.UP_TO_DATE || kind == CalculationStatus.Kind.NOT_POSSIBLE;
        return calculated
                && !view.layoutPane().isBusy()
                && !view.viewTabs().currents().isBusy();
    }

    /** Lays out without a screen, where validating would do nothing. */
    private static void layOut(Container container) {
        container.invalidate();
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                layOut(inner);
            }
        }
    }

    private BufferedImage picture(JRootPane root) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            // Printing would leave out what is selected.
            RepaintManager.currentManager(root).setDoubleBufferingEnabled(false);
            root.paint(g);
        } finally {
            g.dispose();
        }
        return image;
    }

    private static void write(Path file, BufferedImage image) throws IOException {
        ImageIO.write(image, "png", file.toFile());
    }

    private static void waitFor(Callable<Boolean> condition) {
        for (int waited = 0; waited < PATIENCE_MILLIS; waited += LOOK_AGAIN_MILLIS) {
            if (onEventThread(condition)) {
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
