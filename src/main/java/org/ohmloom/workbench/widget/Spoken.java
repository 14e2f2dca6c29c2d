package org.ohmloom.workbench.widget;

import javax.swing.JSpinner;

/** What is read out of a box for a number: it and the field in it, which has the keyboard, by the same name. */
public final class Spoken {

    private Spoken() {}

    /** Names a box for a number. */
    public static void name(JSpinner box, String name) {
        box.getAccessibleContext().setAccessibleName(name);
        if (box.getEditor() instanceof JSpinner.DefaultEditor editor) {
            editor.getTextField().getAccessibleContext().setAccessibleName(name);
        }
    }
}
