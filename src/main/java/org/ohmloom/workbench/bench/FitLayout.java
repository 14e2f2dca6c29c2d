package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Shows the whole layout. */
public final class FitLayout extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public FitLayout(Bench bench) {
        super("fit-layout", WORDS.get("fit-layout.fit-layout"), WORDS.get("fit-layout.fit-layout.about"));
        this.bench = bench;
        withKeys(Keys.menu(KeyEvent.VK_0)).withMnemonic('F').withIcon("fit");
    }

    @Override
    public void run() {
        bench.views().canvas().fit();
    }

    @Override
    public void refresh() {
        setReady(bench.desk().document().isPresent(), WORDS.get("fit-layout.no-harness-is-open"));
    }
}
