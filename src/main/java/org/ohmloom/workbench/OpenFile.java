package org.ohmloom.workbench;

import java.awt.event.KeyEvent;

/** Opens a harness file. */
final class OpenFile extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Filing filing;

    OpenFile(Filing filing) {
        super("open-file", "Open…", "Open a harness file");
        this.filing = filing;
        withKeys(Keys.menu(KeyEvent.VK_O)).withMnemonic('O').withIcon("open");
    }

    @Override
    void run() {
        filing.open();
    }
}
