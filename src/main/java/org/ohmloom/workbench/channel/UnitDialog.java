package org.ohmloom.workbench.channel;

import java.awt.Component;
import java.nio.file.Path;
import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.words.Words;

/** Asks which control unit to put into a harness, and where. */
final class UnitDialog {

    private UnitDialog() {}

    /** The edit that puts it in; empty when a person gives up. */
    static Optional<Edit> ask(Component over, Harness harness, Desk desk, Services services) {
        Optional<Path> folder = desk.document().flatMap(Document::file).map(Path::getParent);
        return new PaneDialog(over, "unit-dialog", Words.of("channels").get("unit.title"))
                .noSmaller()
                .ask(answer -> new UnitPane(harness, folder, services, answer), UnitPane::okButton);
    }
}
