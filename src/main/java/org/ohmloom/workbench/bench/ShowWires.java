package org.ohmloom.workbench.bench;

import org.ohmloom.workbench.command.Command;

/** Draws every wire in its bundle, or the bundles alone. */
public final class ShowWires extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public ShowWires(Bench bench) {
        super("show-wires", "Draw single wires", "Draw every wire in its bundle, or the bundles alone");
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
