package org.ohmloom.workbench;

import java.awt.event.KeyEvent;

/** Goes to the filter of the lists. */
final class FilterRows extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    FilterRows(Bench bench) {
        super("filter-rows", "Filter rows", "Type words to see only the rows that hold them");
        this.bench = bench;
        withKeys(Keys.menu(KeyEvent.VK_F)).withMnemonic('F').withIcon("find");
    }

    @Override
    void run() {
        bench.lists().filterField().requestFocusInWindow();
        bench.lists().filterField().selectAll();
    }

    @Override
    void refresh() {
        setReady(bench.desk().document().isPresent(), "no harness is open");
    }
}
