package org.ohmloom.workbench.bench;

import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.words.Words;

/** Draws every wire in its bundle, or the bundles alone. */
public final class ShowWires extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public ShowWires(Bench bench) {
        super("show-wires", WORDS.get("show-wires.draw-single-wires"), WORDS.get("show-wires.draw-single-wires.about"));
        this.bench = bench;
        withMnemonic('W');
    }

    @Override
    public void run() {
        bench.desk()
                .show(bench.desk()
                        .view()
                        .withOptions(bench.desk()
                                .view()
                                .options()
                                .withWires(!bench.desk().view().options().wires())));
    }

    @Override
    public void refresh() {
        putValue(SELECTED_KEY, bench.desk().view().options().wires());
    }
}
