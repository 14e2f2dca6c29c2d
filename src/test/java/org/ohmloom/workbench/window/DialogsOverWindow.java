package org.ohmloom.workbench.window;

import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Window;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.JDialog;
import javax.swing.JProgressBar;
import org.ohmloom.workbench.ComponentTree;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.command.Command;

/** Opens dialogs and windows over a window one after the other and looks what is cut in each. */
final class DialogsOverWindow {

    private static final int ROUNDS_OF_LAYOUT = 4;
    private static final int LOOKS = 5;

    private final WorkbenchWindow window;
    private final List<String> cut = new ArrayList<>();

    DialogsOverWindow(WorkbenchWindow window) {
        this.window = window;
    }

    /** What was cut in all of them, a line each. */
    List<String> cut() {
        return List.copyOf(cut);
    }

    /** Opens what a command opens. */
    void ofCommand(String id) {
        Command command = OnEventThread.get(() -> window.view().book().get(id));
        if (OnEventThread.get(command::isEnabled)) {
            opened(id, command::run);
        } else {
            cut.add("dialog | the command " + id + " is not ready");
        }
    }

    /** Opens something, waits until nothing in it is under way, looks and closes it. */
    void opened(String name, Runnable open) {
        List<Window> before = showing();
        EventQueue.invokeLater(open);
        OnEventThread.await("dialog of " + name, () -> over(before).isPresent());
        Window dialog = OnEventThread.get(() -> over(before).orElseThrow());
        OnEventThread.await("the end of what is under way in " + name, () -> !isBusy(dialog));
        settle();
        cut.addAll(cut("dialog " + name, dialog));
        OnEventThread.run(dialog::dispose);
        settle();
    }

    private static List<Window> showing() {
        return OnEventThread.get(() ->
                Arrays.stream(Window.getWindows()).filter(Window::isShowing).toList());
    }

    private Optional<Window> over(List<Window> before) {
        return Arrays.stream(Window.getWindows())
                .filter(each -> each.isShowing() && !before.contains(each))
                .filter(each -> each instanceof JDialog ? each.getOwner() == window : "manual".equals(each.getName()))
                .findFirst();
    }

    private static boolean isBusy(Container dialog) {
        return ComponentTree.all(dialog).stream()
                .anyMatch(each -> each instanceof JProgressBar bar && bar.isShowing() && bar.isIndeterminate());
    }

    /** What stays cut in a window, however often one looks: what came in a moment ago may not have its room yet. */
    static List<String> cut(String where, Window of) {
        List<String> cut = cutNow(where, of);
        for (int look = 1; look < LOOKS && !cut.isEmpty(); look++) {
            settle();
            cut = cutNow(where, of);
        }
        return cut;
    }

    private static List<String> cutNow(String where, Window of) {
        // texts take their lines when they have their width, and what is around them makes room then
        for (int round = 0; round < ROUNDS_OF_LAYOUT; round++) {
            OnEventThread.run(of::validate);
        }
        return OnEventThread.get(() -> Clipping.in(of)).stream()
                .map(each -> where + " | " + each)
                .toList();
    }

    /** Lets everything that is under way on the event thread come to its end. */
    static void settle() {
        for (int k = 0; k < 3; k++) {
            OnEventThread.run(() -> {});
        }
    }
}
