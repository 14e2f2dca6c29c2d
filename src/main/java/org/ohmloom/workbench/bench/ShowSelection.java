package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Reveal;

/** Brings the selection into view. */
public final class ShowSelection extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public ShowSelection(Bench bench) {
        super("show-selection", "Show selection on layout", "Bring what is selected into view on the layout");
        this.bench = bench;
        withKeys(Keys.menu(KeyEvent.VK_J)).withMnemonic('J').withIcon("target");
    }

    @Override
    public void run() {
        Reveal.inFront(bench.layout().canvas()).centreSelection();
    }

    @Override
    public void refresh() {
        setReady(!bench.desk().selection().ids().isEmpty(), "nothing is selected");
    }
}
