package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import java.util.Optional;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;

/** Takes the last change back. */
public final class Undo extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public Undo(Bench bench) {
        super("undo", "Undo", "Take the last change back");
        this.bench = bench;
        withKeys(Keys.menu(KeyEvent.VK_Z)).withMnemonic('U').withIcon("undo");
    }

    @Override
    public void run() {
        if (bench.lists().commit()) {
            bench.desk().document().ifPresent(document -> document.session().undo());
        }
    }

    @Override
    public void refresh() {
        Optional<String> label =
                bench.desk().document().flatMap(document -> document.session().undoLabel());
        putValue(
                NAME,
                label.map(text -> "Undo " + bench.desk().units().text(text)).orElse("Undo"));
        setReady(label.isPresent(), "nothing to take back");
    }
}
