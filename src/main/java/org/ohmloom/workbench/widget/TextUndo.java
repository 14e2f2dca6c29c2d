package org.ohmloom.workbench.widget;

import java.awt.event.KeyEvent;
import javax.swing.JComponent;
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
        Keys.bind(text, JComponent.WHEN_FOCUSED, Keys.menu(KeyEvent.VK_Z), "undo-text", () -> {
            if (steps.canUndo()) {
                steps.undo();
            }
        });
        Keys.bind(text, JComponent.WHEN_FOCUSED, Keys.menuShift(KeyEvent.VK_Z), "redo-text", () -> {
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
}
