package org.ohmloom.workbench.bench;

import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.DividerKeys;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Gives the keyboard to a divider between two parts of the window. */
final class MoveDivider extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    MoveDivider() {
        super("move-divider", WORDS.get("move-divider"), WORDS.get("move-divider.about"));
        withKeys(Keys.shift(KeyEvent.VK_F6));
    }

    @Override
    public void run() {
        // a menu it was chosen in gives the keyboard back first
        EventQueue.invokeLater(() -> DividerKeys.next(
                KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner()));
    }
}
