package org.ohmloom.workbench.command;

import java.awt.event.KeyEvent;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JToggleButton;

/**
 * Buttons of commands outside the menus. A command's letter is that of its line in a menu; a button that kept it would be pressed by
 * Alt and that letter before a menu of the same letter opens.
 */
public final class CommandButton {

    private CommandButton() {}

    /** A button to press. */
    public static JButton of(Command command) {
        return without(new JButton(command));
    }

    /** A button that stays pressed while the command is on. */
    public static JToggleButton toggle(Command command) {
        return without(new JToggleButton(command));
    }

    private static <B extends AbstractButton> B without(B button) {
        button.setMnemonic(KeyEvent.VK_UNDEFINED);
        return button;
    }
}
