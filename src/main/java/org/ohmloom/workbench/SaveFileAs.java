package org.ohmloom.workbench;

import java.awt.event.KeyEvent;

/** Saves the harness to another file. */
final class SaveFileAs extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    SaveFileAs(Bench bench) {
        super("save-as", "Save as…", "Save the harness to another file");
        this.bench = bench;
        withKeys(Keys.menuShift(KeyEvent.VK_S)).withMnemonic('A');
    }

    @Override
    void run() {
        if (bench.lists().commit()) {
            bench.filing().saveAs();
        }
    }

    @Override
    void refresh() {
        setReady(bench.desk().document().isPresent(), "no harness is open");
    }
}
