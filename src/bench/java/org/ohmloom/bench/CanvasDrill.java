package org.ohmloom.bench;

import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.lang.reflect.InvocationTargetException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import javax.swing.JFrame;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.SceneLayout;
import org.ohmloom.draw.SceneOptions;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.draw.ShopHarness;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.canvas.LayoutCanvas;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.settings.Look;

/** The layout of a large harness on a canvas without a window: what the event thread does for a person's hand, step by step. */
final class CanvasDrill {

    private static final int WIDE = 1600;
    private static final int HIGH = 900;
    private static final long SEED = 7;
    private static final int STEPS = 12;

    private final Harness harness;
    private final SceneLayout layout;
    private final LayoutCanvas canvas;
    private final BufferedImage screen = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
    private final List<String> elements;
    private int step;

    CanvasDrill(int wires) {
        Look.LIGHT.install();
        SceneFonts fonts = SceneFonts.load();
        this.harness = ShopHarness.of(SEED, wires);
        this.layout = new SceneLayout(fonts);
        this.canvas = new LayoutCanvas("layout", "Layout", "The harness", new ScenePainter(fonts), ids -> {});
        canvas.setSize(WIDE, HIGH);
        Scene scene = layOut();
        this.elements = scene.elements();
        onEventThread(() -> {
            if (!GraphicsEnvironment.isHeadless()) {
                JFrame window = new JFrame();
                window.setUndecorated(true);
                window.add(canvas);
                window.setSize(WIDE, HIGH);
                window.setVisible(true);
            }
        });
        show(scene);
        awaitSharp();
    }

    /** Runs a task on the event thread and waits for it. */
    static void onEventThread(Runnable task) {
        try {
            EventQueue.invokeAndWait(task);
        } catch (InterruptedException | InvocationTargetException failed) {
            throw new IllegalStateException(failed);
        }
    }

    /** Waits until a sharp picture is there, off the event thread. */
    void awaitSharp() {
        boolean[] sharp = new boolean[1];
        while (!sharp[0]) {
            onEventThread(() -> sharp[0] = canvas.isSharp());
            LockSupport.parkNanos(2_000_000);
        }
    }

    /** Lays the harness out with every wire, as for a change; not on the event thread of the program. */
    Scene layOut() {
        return layout.layoutBoard(
                harness, Optional.empty(), Optional.empty(), new SceneOptions(SceneOptions.Numbers.SIZE, true));
    }

    /** Shows a scene that was laid out, and paints it. */
    void show(Scene scene) {
        onEventThread(() -> {
            canvas.show(Optional.of(scene), "", true);
            paint();
        });
    }

    /** One step of dragging the scene about, painted. */
    void pan() {
        mouse(MouseEvent.MOUSE_PRESSED, 400, 400);
        mouse(MouseEvent.MOUSE_DRAGGED, 400 + (step % 2 == 0 ? 23 : -23), 411);
        step++;
        paint();
        mouse(MouseEvent.MOUSE_RELEASED, 400, 411);
    }

    /** One click of the wheel, painted. */
    void zoom() {
        canvas.dispatchEvent(new MouseWheelEvent(
                canvas,
                MouseEvent.MOUSE_WHEEL,
                0,
                0,
                800,
                450,
                0,
                false,
                MouseWheelEvent.WHEEL_UNIT_SCROLL,
                1,
                step++ % 4 < 2 ? -1 : 1));
        paint();
    }

    /** The pointer moves on, painted. */
    void hover() {
        step++;
        mouse(MouseEvent.MOUSE_MOVED, 100 + step * 37 % 1400, 80 + step * 53 % 740);
        paint();
    }

    /** Another thing is selected, painted. */
    void select() {
        canvas.select(Selection.of(List.of(elements.get(step++ * 131 % elements.size()))));
        paint();
    }

    /** Larger by so many steps. */
    void closer(int steps) {
        canvas.zoom(steps);
        paint();
    }

    private void mouse(int kind, int x, int y) {
        canvas.dispatchEvent(
                new MouseEvent(canvas, kind, 0, MouseEvent.BUTTON1_DOWN_MASK, x, y, 1, false, MouseEvent.BUTTON1));
    }

    private void paint() {
        Graphics2D g = screen.createGraphics();
        canvas.paint(g);
        g.dispose();
    }

    /** Prints the time of each step, for so many wires as the arguments say. */
    public static void main(String[] arguments) {
        for (String wires : arguments) {
            CanvasDrill drill = new CanvasDrill(Integer.parseInt(wires));
            System.out.println(wires + " wires");
            drill.time("lay out", 2, drill::layOut);
            Scene scene = drill.layOut();
            System.out.println("  " + scene.items().size() + " items, " + drill.elements.size() + " elements");
            drill.time("open", 3, () -> drill.show(scene));
            for (String how : List.of("whole", "near")) {
                drill.steps(how + ": pan", drill::pan);
                drill.steps(how + ": zoom", drill::zoom);
                drill.steps(how + ": hover", drill::hover);
                drill.steps(how + ": select", drill::select);
                drill.time(how + ": sharp", 1, drill::awaitSharp);
                onEventThread(() -> drill.closer(10));
                drill.time(how + ": sharp", 1, drill::awaitSharp);
            }
        }
        System.exit(0);
    }

    private void steps(String what, Runnable task) {
        time(what, STEPS, () -> onEventThread(task));
    }

    /** Prints the time of the thread that works, and the time by the clock. */
    private static void time(String what, int times, Runnable task) {
        double[] worked = new double[times];
        double[] took = new double[times];
        for (int k = 0; k < times; k++) {
            double before = workedMillis();
            long clock = System.nanoTime();
            task.run();
            worked[k] = workedMillis() - before;
            took[k] = (System.nanoTime() - clock) / 1e6;
        }
        Arrays.sort(worked);
        Arrays.sort(took);
        System.out.printf(
                Locale.ROOT,
                "  %-14s worked: median %8.1f ms, most %8.1f ms; by the clock: median %8.1f ms%n",
                what,
                worked[times / 2],
                worked[times - 1],
                took[times / 2]);
    }

    /** Time this thread and the event thread have worked, ms. */
    private static double workedMillis() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long[] nanos = {threads.getCurrentThreadCpuTime()};
        onEventThread(() -> nanos[0] += threads.getCurrentThreadCpuTime());
        return nanos[0] / 1e6;
    }
}
