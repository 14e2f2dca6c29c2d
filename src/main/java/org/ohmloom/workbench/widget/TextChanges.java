package org.ohmloom.workbench.widget;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Follows a text as it is typed. */
public final class TextChanges {

    private TextChanges() {}

    /** Does something after every change of a text, whatever the change. */
    public static void listen(JTextComponent text, Runnable task) {
        text.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                task.run();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                task.run();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                task.run();
            }
        });
    }
}
