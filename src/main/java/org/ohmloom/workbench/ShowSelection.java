package org.ohmloom.workbench;

import java.awt.event.KeyEvent;

/** Brings the selection into view. */
final class ShowSelection extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    ShowSelection(Bench bench) {
        super("show-selection", "Show selection on layout", "Bring what is selected into view on the layout");
        this.bench = bench;
        withKeys(Keys.menu(KeyEvent.VK_J)).withMnemonic('J').withIcon("target");
    }

    @Override
    void run() {
        Reveal.inFront(bench.layout().canvas()).centreSelection();
    }

    @Override
    void refresh() {
        setReady(!bench.desk().selection().ids().isEmpty(), "nothing is selected");
    }
}
