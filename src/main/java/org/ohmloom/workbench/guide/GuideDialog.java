package org.ohmloom.workbench.guide;

import java.awt.Component;
import java.awt.EventQueue;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.ohmloom.analysis.start.FirstHarness;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.words.Words;

/** The guide in a window of its own over the workbench. */
final class GuideDialog {

    private GuideDialog() {}

    /**
     * Shows the guide.
     *
     * @param units  the units of bare numbers, and of the sizes chosen
     * @param worker runs the laying out
     * @param done   takes the harness
     */
    static void show(Component parent, ShownUnits units, Executor worker, Consumer<Harness> done) {
        PaneDialog dialog =
                new PaneDialog(parent, "guide-dialog", Words.of("guide").get("new-guided.title"));
        GaugeSystem sizes = units.sizes() == ShownUnits.Sizes.AWG ? GaugeSystem.AWG : GaugeSystem.METRIC;
        GuidePane pane = new GuidePane(
                (plan, cancel) -> FirstHarness.sized(plan, sizes, WireTables.bundled(), cancel)
                        .analysis()
                        .harness(),
                units,
                worker,
                EventQueue::invokeLater,
                harness -> {
                    dialog.dispose();
                    done.accept(harness);
                },
                dialog::dispose);
        dialog.onEscape(pane::giveUp);
        dialog.onClosed(pane::giveUp);
        dialog.noSmaller().fill(pane, pane.nextButton());
        dialog.setVisible(true);
    }
}
