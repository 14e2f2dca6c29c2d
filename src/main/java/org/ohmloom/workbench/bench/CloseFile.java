package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;

/** Puts the harness away and shows the start screen. */
public final class CloseFile extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public CloseFile(Bench bench) {
        super("close-file", "Close", "Put the harness away and go back to the start screen");
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
        setReady(bench.desk().document().isPresent(), "no harness is open");
    }
}
