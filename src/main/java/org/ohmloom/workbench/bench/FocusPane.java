package org.ohmloom.workbench.bench;

import java.util.function.Supplier;
import javax.swing.JComponent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Reveal;
import org.ohmloom.workbench.words.Words;

/** Moves the keyboard to a view. */
final class FocusPane extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Supplier<JComponent> target;

    /**
     * A command.
     *
     * @param view   key of the view
     * @param target what takes the focus
     */
    FocusPane(String view, int key, Supplier<JComponent> target) {
        super(
                "focus-" + view,
                WORDS.get("view." + view),
                WORDS.get("focus.move-the-keyboard-to", WORDS.get("view." + view)));
        this.target = target;
        withKeys(Keys.menu(key)).withMnemonic(WORDS.letter("view." + view));
    }

    @Override
    public void run() {
        Reveal.inFront(target.get()).requestFocusInWindow();
    }
}
