package org.ohmloom.workbench.channel;

import java.awt.Component;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.words.Words;

/** Asks for a list of sensors and actuators. */
final class ThingListDialog {

    private ThingListDialog() {}

    /** The edit that adds them; empty when a person gives up. */
    static Optional<Edit> ask(Component over, Harness harness) {
        PaneDialog dialog =
                new PaneDialog(over, "list-dialog", Words.of("channels").get("list.title"));
        AtomicReference<Optional<Edit>> agreed = new AtomicReference<>(Optional.empty());
        ThingListPane pane = new ThingListPane(harness, edit -> {
            agreed.set(edit);
            dialog.dispose();
        });
        dialog.fill(pane, pane.addButton());
        dialog.setMinimumSize(dialog.getSize());
        dialog.setVisible(true);
        return agreed.get();
    }
}
