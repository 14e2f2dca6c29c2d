package org.ohmloom.workbench;

import java.awt.event.KeyEvent;

/** Puts the harness away and shows the start screen. */
final class CloseFile extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    CloseFile(Bench bench) {
        super("close-file", "Close", "Put the harness away and go back to the start screen");
        this.bench = bench;
        withKeys(Keys.menu(KeyEvent.VK_W)).withMnemonic('C');
    }

    @Override
    void run() {
        if (bench.lists().commit()) {
            bench.filing().close();
        }
    }

    @Override
    void refresh() {
        setReady(bench.desk().document().isPresent(), "no harness is open");
    }
}
