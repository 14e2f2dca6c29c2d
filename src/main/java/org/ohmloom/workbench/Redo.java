package org.ohmloom.workbench;

import java.awt.event.KeyEvent;
import java.util.Optional;

/** Brings back what was taken back. */
final class Redo extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    Redo(Bench bench) {
        super("redo", "Redo", "Bring back what was taken back");
        this.bench = bench;
        withKeys(Keys.menuShift(KeyEvent.VK_Z)).withMnemonic('R').withIcon("redo");
    }

    @Override
    void run() {
        if (bench.lists().commit()) {
            bench.desk().document().ifPresent(document -> document.session().redo());
        }
    }

    @Override
    void refresh() {
        Optional<String> label =
                bench.desk().document().flatMap(document -> document.session().redoLabel());
        putValue(NAME, label.map(text -> "Redo " + text).orElse("Redo"));
        setReady(label.isPresent(), "nothing to bring back");
    }
}
