package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import java.util.function.Consumer;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.Keys;

/** Writes the build pack. */
public final class ExportPack extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient Consumer<Desk> export;

    public ExportPack(Bench bench, Consumer<Desk> export) {
        super("export-pack", "Build pack…", "Write drawing, pin tables, bill of materials and wire list for the shop");
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
                ? "no harness is open"
                : bench.desk().isSideCopy() ? "keep or drop the side copy first" : "wait for the calculation";
        setReady(bench.desk().isWhole() && !bench.desk().isSideCopy(), whyNot);
    }
}
