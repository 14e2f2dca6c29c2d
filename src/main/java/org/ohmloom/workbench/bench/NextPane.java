package org.ohmloom.workbench.bench;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Reveal;
import org.ohmloom.workbench.words.Words;

/** Moves the keyboard from view to view. */
final class NextPane extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient List<Supplier<JComponent>> targets;

    NextPane(List<Supplier<JComponent>> targets) {
        super("next-pane", WORDS.get("next.next-view"), WORDS.get("next.next-view.about"));
        this.targets = List.copyOf(targets);
        withKeys(Keys.plain(KeyEvent.VK_F6)).withMnemonic('X');
    }

    @Override
    public void run() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        int at = -1;
        for (int k = 0; k < targets.size(); k++) {
            JComponent target = targets.get(k).get();
            if (owner != null && SwingUtilities.isDescendingFrom(owner, target)) {
                at = k;
            }
        }
        Reveal.inFront(targets.get((at + 1) % targets.size()).get()).requestFocusInWindow();
    }
}
