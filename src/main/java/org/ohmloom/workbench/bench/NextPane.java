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

/** Moves the keyboard from view to view. */
final class NextPane extends Command {

    private static final long serialVersionUID = 1L;

    private final transient List<Supplier<JComponent>> targets;

    NextPane(List<Supplier<JComponent>> targets) {
        super("next-pane", "Next view", "Move the keyboard to the next view");
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
