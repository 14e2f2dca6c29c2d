package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;

/** Saves the harness where it lives. */
public final class SaveFile extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public SaveFile(Bench bench) {
        super("save", "Save", "Save the harness to its file");
        this.bench = bench;
        withKeys(Keys.menu(KeyEvent.VK_S)).withMnemonic('S').withIcon("save");
    }

    @Override
    public void run() {
        if (bench.lists().commit()) {
            bench.filing().save();
        }
    }

    @Override
    public void refresh() {
        boolean open = bench.desk().document().isPresent();
        boolean changed = bench.desk()
                .document()
                .filter(document ->
                        document.session().isChanged() || document.file().isEmpty())
                .isPresent();
        setReady(changed, open ? "nothing has changed" : "no harness is open");
    }
}
