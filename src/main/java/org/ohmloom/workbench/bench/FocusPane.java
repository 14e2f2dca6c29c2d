package org.ohmloom.workbench.bench;

import java.util.function.Supplier;
import javax.swing.JComponent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Reveal;

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
        withKeys(Keys.menu(key)).withMnemonic(letter(view));
    }

    /** Layout and Lists begin alike, and so would Lists by its S and Studies. */
    private static char letter(String view) {
        return switch (view) {
            case "Lists" -> 'S';
            case "Studies" -> 'U';
            default -> view.charAt(0);
        };
    }

    @Override
    public void run() {
        Reveal.inFront(target.get()).requestFocusInWindow();
    }
}
