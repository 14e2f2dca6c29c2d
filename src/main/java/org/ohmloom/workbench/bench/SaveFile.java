package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Saves the harness where it lives. */
public final class SaveFile extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public SaveFile(Bench bench) {
        super("save", WORDS.get("save-file.save"), WORDS.get("save-file.save.about"));
        this.bench = bench;
        withKeys(Keys.menu(KeyEvent.VK_S)).withMnemonic('S').withIcon("save");
    }

    @Override
    public void run() {
        if (bench.lists().commit()) {
            bench.filing().save();
        }
    }

    @Override
    public void refresh() {
        boolean open = bench.desk().document().isPresent();
        boolean changed = bench.desk()
                .document()
                .filter(document ->
                        document.session().isChanged() || document.file().isEmpty())
                .isPresent();
        setReady(
                changed, open ? WORDS.get("save-file.nothing-has-changed") : WORDS.get("save-file.no-harness-is-open"));
    }
}
