package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import java.util.Optional;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Brings back what was taken back. */
public final class Redo extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public Redo(Bench bench) {
        super("redo", WORDS.get("redo.redo"), WORDS.get("redo.redo.about"));
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
        Optional<Text> label =
                bench.desk().document().flatMap(document -> document.session().redoLabel());
        putValue(
                NAME,
                label.map(text -> WORDS.get("redo.redo-2", bench.desk().units().text(Words.said(text))))
                        .orElse(WORDS.get("redo.redo")));
        setReady(label.isPresent(), WORDS.get("redo.nothing-to-bring-back"));
    }
}
