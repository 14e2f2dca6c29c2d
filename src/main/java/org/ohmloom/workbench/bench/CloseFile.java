package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Puts the harness away and shows the start screen. */
public final class CloseFile extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public CloseFile(Bench bench) {
        super("close-file", WORDS.get("close-file.close"), WORDS.get("close-file.close.about"));
        this.bench = bench;
        withKeys(Keys.menu(KeyEvent.VK_W)).withMnemonic('C');
    }

    @Override
    public void run() {
        if (bench.lists().commit()) {
            bench.filing().close();
        }
    }

    @Override
    public void refresh() {
        setReady(bench.desk().document().isPresent(), WORDS.get("close-file.no-harness-is-open"));
    }
}
