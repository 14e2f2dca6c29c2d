package org.ohmloom.workbench.findings;

import java.awt.Component;
import java.awt.EventQueue;
import org.ohmloom.review.Finding;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.words.Words;

/** The window of a {@link RemediesPane}. */
public final class RemediesDialog {
    private static final Words WORDS = Words.of("findings");

    private RemediesDialog() {}

    /** Shows the remedies of a finding of the results on the desk. */
    public static void show(Component parent, Desk desk, Finding finding) {
        if (desk.isWhole()) {
            PaneDialog dialog = new PaneDialog(parent, "remedies", WORDS.get("remedies.remedies"));
            RemediesPane pane = new RemediesPane(desk, finding, EventQueue::invokeLater, dialog::dispose);
            dialog.onClosed(pane::stop);
            dialog.fill(pane, pane.applyButton());
            pane.start();
            dialog.setVisible(true);
        }
    }
}
