package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Filing;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Opens a harness file. */
public final class OpenFile extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Filing filing;

    public OpenFile(Filing filing) {
        super("open-file", WORDS.get("open-file.open"), WORDS.get("open-file.open.about"));
        this.filing = filing;
        withKeys(Keys.menu(KeyEvent.VK_O)).withMnemonic('O').withIcon("open");
    }

    @Override
    public void run() {
        filing.open();
    }
}
