package org.ohmloom.workbench.channel;

import java.awt.Component;
import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.pins.Preferences;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.words.Words;

/** Asks what a plan of the pins is to avoid and to leave free. */
final class AskedDialog {

    private AskedDialog() {}

    /**
     * What a person settled.
     *
     * @param preferences what costs how much
     * @param edit        keeps other pins spare; empty when they stay as they were
     */
    record Answer(Preferences preferences, Optional<Edit> edit) {}

    static Optional<Answer> ask(Component over, Harness harness, Preferences now) {
        return new PaneDialog(over, "asked-dialog", Words.of("channels").get("asked.title"))
                .ask(answer -> new AskedPane(harness, now, answer), AskedPane::okButton);
    }
}
