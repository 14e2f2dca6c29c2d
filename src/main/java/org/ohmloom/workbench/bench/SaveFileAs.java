package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Saves the harness to another file. */
public final class SaveFileAs extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public SaveFileAs(Bench bench) {
        super("save-as", WORDS.get("save-file-as.save-as"), WORDS.get("save-file-as.save-as.about"));
        this.bench = bench;
        withKeys(Keys.menuShift(KeyEvent.VK_S)).withMnemonic('A');
    }

    @Override
    public void run() {
        if (bench.lists().commit()) {
            bench.filing().saveAs();
        }
    }

    @Override
    public void refresh() {
        setReady(bench.desk().document().isPresent(), WORDS.get("save-file-as.no-harness-is-open"));
    }
}
