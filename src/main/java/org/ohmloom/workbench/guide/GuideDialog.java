package org.ohmloom.workbench.guide;

import java.awt.Component;
import java.awt.Dialog;
import java.awt.EventQueue;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import org.ohmloom.analysis.start.FirstHarness;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** The guide in a window of its own over the workbench. */
public final class GuideDialog extends JDialog {

    private static final long serialVersionUID = 1L;

    private GuideDialog(Component parent, Executor worker, Consumer<Harness> done) {
        super(
                SwingUtilities.getWindowAncestor(parent),
                Words.of("guide").get("new-guided.title"),
                Dialog.ModalityType.DOCUMENT_MODAL);
        setName("guide-dialog");
        GuidePane pane = new GuidePane(
                (plan, cancel) -> FirstHarness.sized(plan, GaugeSystem.METRIC, WireTables.bundled(), cancel)
                        .analysis()
                        .harness(),
                worker,
                EventQueue::invokeLater,
                harness -> {
                    dispose();
                    done.accept(harness);
                },
                this::dispose);
        setContentPane(pane);
        setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent event) {
                pane.giveUp();
            }
        });
        getRootPane().setDefaultButton(pane.nextButton());
        getRootPane()
                .registerKeyboardAction(
                        event -> pane.giveUp(), Keys.plain(KeyEvent.VK_ESCAPE), JComponent.WHEN_IN_FOCUSED_WINDOW);
        pack();
        setMinimumSize(getSize());
        setLocationRelativeTo(getOwner());
    }

    /**
     * Shows the guide.
     *
     * @param worker runs the laying out
     * @param done   takes the harness
     */
    public static void show(Component parent, Executor worker, Consumer<Harness> done) {
        new GuideDialog(parent, worker, done).setVisible(true);
    }
}
