package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Reveal;
import org.ohmloom.workbench.words.Words;

/** Brings the selection into view. */
public final class ShowSelection extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public ShowSelection(Bench bench) {
        super(
                "show-selection",
                WORDS.get("show-selection.show-selection-on-layout"),
                WORDS.get("show-selection.show-selection-on-layout.about"));
        this.bench = bench;
        withKeys(Keys.menu(KeyEvent.VK_J)).withMnemonic('J').withIcon("target");
    }

    @Override
    public void run() {
        Reveal.inFront(bench.layout().canvas()).centreSelection();
    }

    @Override
    public void refresh() {
        setReady(!bench.desk().selection().ids().isEmpty(), WORDS.get("show-selection.nothing-is-selected"));
    }
}
