package org.ohmloom.workbench;

import java.awt.event.KeyEvent;
import java.util.Optional;

/** Takes the last change back. */
final class Undo extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    Undo(Bench bench) {
        super("undo", "Undo", "Take the last change back");
        this.bench = bench;
        withKeys(Keys.menu(KeyEvent.VK_Z)).withMnemonic('U').withIcon("undo");
    }

    @Override
    void run() {
        if (bench.lists().commit()) {
            bench.desk().document().ifPresent(document -> document.session().undo());
        }
    }

    @Override
    void refresh() {
        Optional<String> label =
                bench.desk().document().flatMap(document -> document.session().undoLabel());
        putValue(NAME, label.map(text -> "Undo " + text).orElse("Undo"));
        setReady(label.isPresent(), "nothing to take back");
    }
}
