package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Goes to the filter of the lists. */
public final class FilterRows extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public FilterRows(Bench bench) {
        super("filter-rows", WORDS.get("filter-rows.filter-rows"), WORDS.get("filter-rows.filter-rows.about"));
        this.bench = bench;
        withKeys(Keys.menu(KeyEvent.VK_F)).withMnemonic('F').withIcon("find");
    }

    @Override
    public void run() {
        bench.lists().filterField().requestFocusInWindow();
        bench.lists().filterField().selectAll();
    }

    @Override
    public void refresh() {
        setReady(bench.desk().document().isPresent(), WORDS.get("filter-rows.no-harness-is-open"));
    }
}
