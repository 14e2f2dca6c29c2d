package org.ohmloom.workbench;

import java.awt.event.KeyEvent;

/** Starts the calculation anew. */
final class Recalculate extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    Recalculate(Bench bench) {
        super("recalculate", "Calculate again", "Start the calculation anew");
        this.bench = bench;
        withKeys(Keys.plain(KeyEvent.VK_F5)).withMnemonic('C').withIcon("calculate");
    }

    @Override
    void run() {
        bench.desk().calculate();
    }

    @Override
    void refresh() {
        setReady(bench.desk().document().isPresent(), "no harness is open");
    }
}
