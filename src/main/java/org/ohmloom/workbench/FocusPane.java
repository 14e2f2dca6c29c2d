package org.ohmloom.workbench;

import java.util.function.Supplier;
import javax.swing.JComponent;

/** Moves the keyboard to a view. */
final class FocusPane extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Supplier<JComponent> target;

    /**
     * A command.
     *
     * @param view   name of the view
     * @param target what takes the focus
     */
    FocusPane(String view, int key, Supplier<JComponent> target) {
        super("focus-" + view.toLowerCase(java.util.Locale.ROOT), view, "Move the keyboard to " + view);
        this.target = target;
        // Layout and Lists begin alike.
        withKeys(Keys.menu(key)).withMnemonic(view.equals("Lists") ? 'S' : view.charAt(0));
    }

    @Override
    void run() {
        target.get().requestFocusInWindow();
    }
}
