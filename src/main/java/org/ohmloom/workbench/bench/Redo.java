package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import java.util.Optional;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;

/** Brings back what was taken back. */
public final class Redo extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public Redo(Bench bench) {
        super("redo", "Redo", "Bring back what was taken back");
        this.bench = bench;
        withKeys(Keys.menuShift(KeyEvent.VK_Z)).withMnemonic('R').withIcon("redo");
    }

    @Override
    public void run() {
        if (bench.lists().commit()) {
            bench.desk().document().ifPresent(document -> document.session().redo());
        }
    }

    @Override
    public void refresh() {
        Optional<String> label =
                bench.desk().document().flatMap(document -> document.session().redoLabel());
        putValue(
                NAME,
                label.map(text -> "Redo " + bench.desk().units().text(text)).orElse("Redo"));
        setReady(label.isPresent(), "nothing to bring back");
    }
}
