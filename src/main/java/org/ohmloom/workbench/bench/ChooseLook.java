package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Changes between light and dark. */
public final class ChooseLook extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public ChooseLook(Bench bench) {
        super("look", WORDS.get("choose-look.dark"), WORDS.get("choose-look.dark.about"));
        this.bench = bench;
        withKeys(Keys.menuShift(KeyEvent.VK_D)).withMnemonic('D').withIcon("look");
        refresh();
    }

    @Override
    public void run() {
        Look changed = bench.preferences().now().look().other();
        bench.preferences().change(before -> before.withLook(changed)
                .withPersonal(before.personal().withFollowSystem(false)));
        bench.looks().accept(changed);
        refresh();
    }

    @Override
    public void refresh() {
        putValue(SELECTED_KEY, bench.preferences().now().look() == Look.DARK);
    }
}
