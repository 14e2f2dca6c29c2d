package org.ohmloom.workbench.widget;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.text.JTextComponent;
import javax.swing.undo.UndoManager;

/** Undo and redo inside a text that is not committed yet; while it has the focus those keys are its own. */
public final class TextUndo {

    private static final String PROPERTY = "org.ohmloom.undo";

    private TextUndo() {}

    /** Gives a text its own undo. */
    public static void install(JTextComponent text) {
        UndoManager steps = new UndoManager();
        text.getDocument().addUndoableEditListener(steps);
        text.putClientProperty(PROPERTY, steps);
        bind(text, "undo-text", Keys.menu(KeyEvent.VK_Z), () -> {
            if (steps.canUndo()) {
                steps.undo();
            }
        });
        bind(text, "redo-text", Keys.menuShift(KeyEvent.VK_Z), () -> {
            if (steps.canRedo()) {
                steps.redo();
            }
        });
    }

    /** Forgets the steps of an earlier text. */
    public static void forget(JTextComponent text) {
        if (text.getClientProperty(PROPERTY) instanceof UndoManager steps) {
            steps.discardAllEdits();
        }
    }

    private static void bind(JTextComponent text, String name, javax.swing.KeyStroke keys, Runnable task) {
        text.getInputMap().put(keys, name);
        text.getActionMap().put(name, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                task.run();
            }
        });
    }
}
