package org.ohmloom.bench;

import com.sun.management.OperatingSystemMXBean;
import java.awt.Component;
import java.awt.event.KeyEvent;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.ohmloom.draw.ShopHarness;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.Workbench;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.window.WorkbenchWindow;

/**
 * Time from the Enter key in a cell of the list of wires to the new numbers in a real window: until the lists have the currents of
 * the changed harness, and until the layout is drawn with them. Needs a display. Arguments: counts of wires. Prints the time by the
 * clock and the processor time of each thread that worked, since other programs may run at the same time.
 */
public final class KeyToNumbers {

    private static final long SEED = 7;
    private static final String CONDUCTOR = "Conductor";
    private static final int EDITS = Integer.getInteger("edits", 3);
    private static final long PAUSE_NANOS = 2_000_000;

    private final WorkbenchWindow window;

    private KeyToNumbers(WorkbenchWindow window) {
        this.window = window;
    }

    /** Opens a generated harness for each count and edits it. */
    public static void main(String[] arguments) {
        for (String count : arguments) {
            Harness harness = ShopHarness.of(SEED, Integer.parseInt(count));
            KeyToNumbers run = new KeyToNumbers(shown());
            long opened = System.nanoTime();
            CanvasDrill.onEventThread(() -> run.desk().open(Document.unsaved(harness, "shop")));
            run.await(run::isShown);
            System.out.printf(Locale.ROOT, "%s wires, opened: %.1f s%n", count, (System.nanoTime() - opened) / 1e9);
            for (int edit = 0; edit < EDITS; edit++) {
                run.edit(edit % 2 == 0 ? "6" : "4");
            }
            CanvasDrill.onEventThread(run.window::dispose);
        }
        System.exit(0);
    }

    private static WorkbenchWindow shown() {
        WorkbenchWindow[] made = new WorkbenchWindow[1];
        CanvasDrill.onEventThread(() -> made[0] = window());
        return made[0];
    }

    private static WorkbenchWindow window() {
        Look.LIGHT.install();
        PreferenceStore preferences = PreferenceStore.inMemory(Preferences.DEFAULT.withCautionsRead());
        WorkbenchWindow made = Workbench.window(preferences, () -> {});
        made.setSize(1600, 1000);
        made.setVisible(true);
        return made;
    }

    private Desk desk() {
        return window.view().desk();
    }

    /** Whether currents, temperatures and the layout are those of the harness as it is, and painted. */
    private boolean isShown() {
        return desk().isCurrent()
                && !window.view().layoutPane().isBusy()
                && window.view().layoutPane().canvas().isSharp();
    }

    private void edit(String size) {
        CanvasDrill.onEventThread(() -> {
            JTable wires = window.view().lists().front();
            int column = wires.getColumnModel().getColumnIndex(CONDUCTOR);
            wires.requestFocusInWindow();
            wires.changeSelection(0, column, false, false);
            wires.editCellAt(0, column);
            ((JTextField) wires.getEditorComponent()).setText(size + " mm2");
        });
        Harness before = desk().harness().orElseThrow();
        Map<String, Double> worked = workedSeconds();
        double program = programSeconds();
        long pressed = System.nanoTime();
        CanvasDrill.onEventThread(() -> {
            Component field = window.view().lists().front().getEditorComponent();
            field.dispatchEvent(
                    new KeyEvent(field, KeyEvent.KEY_PRESSED, System.currentTimeMillis(), 0, KeyEvent.VK_ENTER, '\n'));
        });
        double answered = secondsSince(pressed);
        await(() -> desk().harness().orElseThrow() != before && desk().isCurrent());
        double numbers = secondsSince(pressed);
        double numbersWorked = programSeconds() - program;
        await(this::isShown);
        double drawn = secondsSince(pressed);
        System.out.printf(
                Locale.ROOT,
                "  answered %.3f s, numbers %.2f s (%.2f s worked), layout drawn %.2f s (%.2f s worked)%n",
                answered,
                numbers,
                numbersWorked,
                drawn,
                programSeconds() - program);
        workedSeconds().forEach((thread, seconds) -> {
            double own = seconds - worked.getOrDefault(thread, 0.0);
            if (own > 0.01) {
                System.out.printf(Locale.ROOT, "    %-24s %7.2f s worked%n", thread, own);
            }
        });
    }

    private static double secondsSince(long nanos) {
        return (System.nanoTime() - nanos) / 1e9;
    }

    /** Processor time of the whole program, s. */
    private static double programSeconds() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime() / 1e9;
    }

    private static Map<String, Double> workedSeconds() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        Map<String, Double> worked = new TreeMap<>();
        for (long id : threads.getAllThreadIds()) {
            ThreadInfo thread = threads.getThreadInfo(id);
            if (thread != null) {
                worked.merge(thread.getThreadName(), threads.getThreadCpuTime(id) / 1e9, Double::sum);
            }
        }
        return worked;
    }

    private void await(BooleanSupplier condition) {
        boolean[] met = new boolean[1];
        while (!met[0]) {
            CanvasDrill.onEventThread(() -> met[0] = condition.getAsBoolean());
            LockSupport.parkNanos(PAUSE_NANOS);
        }
    }
}
