package org.ohmloom.workbench.widget;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.KeyStroke;

/** Key strokes as this platform expects them. */
public final class Keys {

    private Keys() {}

    /** The menu key of the platform, Ctrl or Command, with another key. */
    public static KeyStroke menu(int key) {
        return KeyStroke.getKeyStroke(key, menuMask());
    }

    /** The menu key and Shift with another key. */
    public static KeyStroke menuShift(int key) {
        return KeyStroke.getKeyStroke(key, menuMask() | InputEvent.SHIFT_DOWN_MASK);
    }

    /** Alt with another key. */
    public static KeyStroke alt(int key) {
        return KeyStroke.getKeyStroke(key, InputEvent.ALT_DOWN_MASK);
    }

    /** Shift with another key. */
    public static KeyStroke shift(int key) {
        return KeyStroke.getKeyStroke(key, InputEvent.SHIFT_DOWN_MASK);
    }

    /** A key alone. */
    public static KeyStroke plain(int key) {
        return KeyStroke.getKeyStroke(key, 0);
    }

    /** The keys as people write them: "Ctrl+Shift+Z". */
    public static String text(KeyStroke keys) {
        String modifiers = InputEvent.getModifiersExText(keys.getModifiers());
        String key =
                switch (keys.getKeyCode()) {
                    case KeyEvent.VK_EQUALS -> "=";
                    case KeyEvent.VK_MINUS -> "-";
                    case KeyEvent.VK_PERIOD -> ".";
                    default -> KeyEvent.getKeyText(keys.getKeyCode());
                };
        return modifiers.isEmpty() ? key : modifiers + "+" + key;
    }

    /** The mask of the platform's menu key; Ctrl where there is no screen to ask. */
    public static int menuMask() {
        return GraphicsEnvironment.isHeadless()
                ? InputEvent.CTRL_DOWN_MASK
                : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }
}
