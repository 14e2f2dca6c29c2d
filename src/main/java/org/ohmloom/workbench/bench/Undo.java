package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import java.util.Optional;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Takes the last change back. */
public final class Undo extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public Undo(Bench bench) {
        super("undo", WORDS.get("undo.undo"), WORDS.get("undo.undo.about"));
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
        Optional<Text> label =
                bench.desk().document().flatMap(document -> document.session().undoLabel());
        putValue(
                NAME,
                label.map(text -> WORDS.get("undo.undo-2", bench.desk().units().text(Words.said(text))))
                        .orElse(WORDS.get("undo.undo")));
        setReady(label.isPresent(), WORDS.get("undo.nothing-to-take-back"));
    }
}
