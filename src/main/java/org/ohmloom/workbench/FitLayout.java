package org.ohmloom.workbench;

import java.awt.event.KeyEvent;

/** Shows the whole layout. */
final class FitLayout extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    FitLayout(Bench bench) {
        super("fit-layout", "Fit layout", "Show the whole layout, or all currents where they are in front");
        this.bench = bench;
        withKeys(Keys.menu(KeyEvent.VK_0)).withMnemonic('F').withIcon("fit");
    }

    @Override
    void run() {
        bench.views().canvas().fit();
    }

    @Override
    void refresh() {
        setReady(bench.desk().document().isPresent(), "no harness is open");
    }
}
