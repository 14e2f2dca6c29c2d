package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import java.util.function.Consumer;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Writes the build pack. */
public final class ExportPack extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient Consumer<Desk> export;

    public ExportPack(Bench bench, Consumer<Desk> export) {
        super("export-pack", WORDS.get("export-pack.build-pack"), WORDS.get("export-pack.build-pack.about"));
        this.bench = bench;
        this.export = export;
        withKeys(Keys.menu(KeyEvent.VK_E)).withMnemonic('B').withIcon("pack");
    }

    @Override
    public void run() {
        if (bench.lists().commit()) {
            export.accept(bench.desk());
        }
    }

    @Override
    public void refresh() {
        String whyNot = bench.desk().document().isEmpty()
                ? WORDS.get("export-pack.no-harness-is-open")
                : bench.desk().isSideCopy()
                        ? WORDS.get("export-pack.keep-or-drop-the")
                        : WORDS.get("export-pack.wait-for-the-calculation");
        setReady(bench.desk().isWhole() && !bench.desk().isSideCopy(), whyNot);
    }
}
