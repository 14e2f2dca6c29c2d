package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Starts the calculation anew. */
public final class Recalculate extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public Recalculate(Bench bench) {
        super("recalculate", WORDS.get("recalculate.calculate-again"), WORDS.get("recalculate.calculate-again.about"));
        this.bench = bench;
        withKeys(Keys.plain(KeyEvent.VK_F5)).withMnemonic('C').withIcon("calculate");
    }

    @Override
    public void run() {
        bench.desk().calculateAnew();
    }

    @Override
    public void refresh() {
        setReady(bench.desk().document().isPresent(), WORDS.get("recalculate.no-harness-is-open"));
    }
}
