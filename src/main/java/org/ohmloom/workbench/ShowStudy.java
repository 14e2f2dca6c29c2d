package org.ohmloom.workbench;

/** Brings a study to the front. */
final class ShowStudy extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final String key;

    ShowStudy(Bench bench, Study<?> study, char mnemonic) {
        super("study-" + study.key(), study.title(), study.about());
        this.bench = bench;
        this.key = study.key();
        withMnemonic(mnemonic);
    }

    @Override
    void run() {
        bench.views().showStudy(key);
    }

    @Override
    void refresh() {
        setReady(bench.desk().document().isPresent(), "no harness is open");
    }
}
