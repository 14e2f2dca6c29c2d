package org.ohmloom.workbench.bench;

import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.study.TabName;
import org.ohmloom.workbench.words.Words;

/** Brings a study to the front. */
final class ShowStudy extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final String key;

    /**
     * A command.
     *
     * @param name what its tab is called
     */
    ShowStudy(Bench bench, TabName name) {
        super("study-" + name.key(), name.title(), name.about());
        this.bench = bench;
        this.key = name.key();
    }

    @Override
    public void run() {
        bench.views().showStudy(key);
    }

    @Override
    public void refresh() {
        setReady(bench.desk().document().isPresent(), WORDS.get("show.no-harness-is-open"));
    }
}
