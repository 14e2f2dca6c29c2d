package org.ohmloom.workbench.channel;

import java.awt.Component;
import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.words.Words;

/** Asks for a list of sensors and actuators. */
final class ThingListDialog {

    private ThingListDialog() {}

    /** The edit that adds them; empty when a person gives up. */
    static Optional<Edit> ask(Component over, Harness harness) {
        return new PaneDialog(over, "list-dialog", Words.of("channels").get("list.title"))
                .noSmaller()
                .ask(answer -> new ThingListPane(harness, answer), ThingListPane::addButton);
    }
}
