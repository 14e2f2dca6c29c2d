package org.ohmloom.workbench.bench;

import org.ohmloom.workbench.command.Command;

/** Brings a study to the front. */
final class ShowStudy extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final String key;

    /**
     * A command.
     *
     * @param key   key of the tab
     * @param title what stands on it
     * @param about what it answers
     */
    ShowStudy(Bench bench, String key, String title, String about, char mnemonic) {
        super("study-" + key, title, about);
        this.bench = bench;
        this.key = key;
        withMnemonic(mnemonic);
    }

    @Override
    public void run() {
        bench.views().showStudy(key);
    }

    @Override
    public void refresh() {
        setReady(bench.desk().document().isPresent(), "no harness is open");
    }
}
