package org.ohmloom.workbench.widget;

import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.InputMap;
import javax.swing.JComponent;
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

    /**
     * Lets keys do something in a component.
     *
     * @param condition one of the three of {@link JComponent#getInputMap(int)}
     * @param name      what it is called there
     */
    public static void bind(JComponent component, int condition, KeyStroke keys, String name, Runnable task) {
        component.getInputMap(condition).put(keys, name);
        component.getActionMap().put(name, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                task.run();
            }
        });
    }

    /** Leaves keys to the commands and the window that a component, or what lies in it, would take for itself. */
    public static void leave(JComponent component, int... keys) {
        InputMap own = component.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        for (int key : keys) {
            own.put(plain(key), "none");
        }
    }

    /** The same of keys together, wherever in the component the keyboard is. */
    public static void leave(JComponent component, KeyStroke together) {
        component.getInputMap(JComponent.WHEN_FOCUSED).put(together, "none");
        component.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(together, "none");
    }

    /** Lets Tab leave a table in which nothing is typed, instead of going from cell to cell. */
    public static void leaveByTab(JComponent table) {
        table.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        table.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        leave(table, KeyEvent.VK_TAB);
    }

    /** Whether a key types a character: others must reach the commands instead of opening a cell. */
    public static boolean isTyping(KeyEvent key) {
        char typed = key.getKeyChar();
        return !key.isControlDown()
                && !key.isMetaDown()
                && !key.isAltDown()
                && typed != KeyEvent.CHAR_UNDEFINED
                && !Character.isISOControl(typed);
    }

    /** The mask of the platform's menu key; Ctrl where there is no screen to ask. */
    public static int menuMask() {
        return GraphicsEnvironment.isHeadless()
                ? InputEvent.CTRL_DOWN_MASK
                : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }
}
