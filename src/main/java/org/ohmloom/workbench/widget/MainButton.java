package org.ohmloom.workbench.widget;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.JButton;

/** A button for what is done most from a place, which stands out like the first button of a dialog, with the keyboard or without. */
public final class MainButton {

    private MainButton() {}

    /** Makes a button stand out. */
    public static void style(JButton button) {
        style(button, false);
    }

    /** Makes a button stand out with more room around its text. */
    public static void styleLarge(JButton button) {
        style(button, true);
    }

    private static void style(JButton button, boolean large) {
        button.putClientProperty(
                FlatClientProperties.STYLE,
                "background: $Button.default.background; foreground: $Button.default.foreground;"
                        + " focusedBackground: $Button.default.focusedBackground;"
                        + " hoverBackground: $Button.default.hoverBackground;"
                        + " pressedBackground: $Button.default.pressedBackground"
                        + (large ? "; margin: 7,14,7,14" : ""));
    }
}
