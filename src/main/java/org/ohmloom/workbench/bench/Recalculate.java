package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;

/** Starts the calculation anew. */
public final class Recalculate extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public Recalculate(Bench bench) {
        super("recalculate", "Calculate again", "Start the calculation anew");
        this.bench = bench;
        withKeys(Keys.plain(KeyEvent.VK_F5)).withMnemonic('C').withIcon("calculate");
    }

    @Override
    public void run() {
        bench.desk().calculateAnew();
    }

    @Override
    public void refresh() {
        setReady(bench.desk().document().isPresent(), "no harness is open");
    }
}
