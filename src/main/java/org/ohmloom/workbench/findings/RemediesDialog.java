package org.ohmloom.workbench.findings;

import java.awt.Component;
import java.awt.Dialog;
import java.awt.EventQueue;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import org.ohmloom.review.Finding;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.Keys;

/** The window of a {@link RemediesPane}. */
public final class RemediesDialog extends JDialog {

    private static final long serialVersionUID = 1L;

    private RemediesDialog(Component parent, Desk desk, Finding finding) {
        super(SwingUtilities.getWindowAncestor(parent), "Remedies", Dialog.ModalityType.DOCUMENT_MODAL);
        setName("remedies");
        RemediesPane pane = new RemediesPane(desk, finding, EventQueue::invokeLater, this::dispose);
        setContentPane(pane);
        setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        addWindowListener(new java.awt.event.WindowAdapter() {
            @Override
            public void windowClosed(java.awt.event.WindowEvent event) {
                pane.stop();
            }
        });
        getRootPane().setDefaultButton(pane.applyButton());
        getRootPane()
                .registerKeyboardAction(
                        event -> dispose(),
                        Keys.plain(java.awt.event.KeyEvent.VK_ESCAPE),
                        JComponent.WHEN_IN_FOCUSED_WINDOW);
        pack();
        setLocationRelativeTo(getOwner());
        pane.start();
    }

    /** Shows the remedies of a finding of the results on the desk. */
    public static void show(Component parent, Desk desk, Finding finding) {
        if (desk.isWhole()) {
            new RemediesDialog(parent, desk, finding).setVisible(true);
        }
    }
}
