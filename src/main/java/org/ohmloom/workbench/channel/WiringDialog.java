package org.ohmloom.workbench.channel;

import java.awt.Component;
import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.words.Words;

/** Shows the wires that join channels to their pins before they are made, in the colours asked for. */
final class WiringDialog {

    private WiringDialog() {}

    /** The edit that makes them; empty when a person gives up. */
    static Optional<Edit> ask(Component over, Harness harness, Services services) {
        PaneDialog dialog =
                new PaneDialog(over, "wiring-dialog", Words.of("channels").get("wiring.title"));
        return dialog.noSmaller()
                .ask(
                        answer -> {
                            WiringPane pane = new WiringPane(harness, services, answer);
                            dialog.onClosed(pane::stop);
                            return pane;
                        },
                        WiringPane::okButton);
    }
}
