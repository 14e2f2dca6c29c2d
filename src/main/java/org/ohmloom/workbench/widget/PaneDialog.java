package org.ohmloom.workbench.widget;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;

/** A window that holds one pane, over the window of another component; closed by Escape, it is thrown away. */
public final class PaneDialog extends JDialog {

    private static final long serialVersionUID = 1L;

    /** A window to be filled and shown; the other one waits for it. */
    public PaneDialog(Component over, String name, String title) {
        this(over, name, title, ModalityType.DOCUMENT_MODAL);
    }

    /** A window to be filled and shown. */
    public PaneDialog(Component over, String name, String title, ModalityType modality) {
        super(SwingUtilities.getWindowAncestor(over), title, modality);
        setName(name);
        setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        onEscape(this::dispose);
    }

    /** Lets Escape do something else than close it. */
    public void onEscape(Runnable task) {
        getRootPane()
                .registerKeyboardAction(
                        event -> task.run(), Keys.plain(KeyEvent.VK_ESCAPE), JComponent.WHEN_IN_FOCUSED_WINDOW);
    }

    /** Does something once it is closed, in whatever way. */
    public void onClosed(Runnable task) {
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent event) {
                task.run();
            }
        });
    }

    /** Puts the pane in, at the size it asks for. */
    public void fill(JComponent pane) {
        setContentPane(pane);
        pack();
        setLocationRelativeTo(getOwner());
    }

    /** Puts the pane in, at the size it asks for; Enter presses the button. */
    public void fill(JComponent pane, JButton button) {
        fill(pane);
        getRootPane().setDefaultButton(button);
    }
}
