package org.ohmloom.workbench;

import java.awt.event.KeyEvent;

/** Changes between light and dark. */
final class ChooseLook extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    ChooseLook(Bench bench) {
        super("look", "Dark", "Change between light and dark");
        this.bench = bench;
        withKeys(Keys.menuShift(KeyEvent.VK_D)).withMnemonic('D').withIcon("look");
        refresh();
    }

    @Override
    void run() {
        Look changed = bench.preferences().now().look().other();
        bench.preferences().change(before -> before.withLook(changed));
        bench.looks().accept(changed);
        refresh();
    }

    @Override
    void refresh() {
        putValue(SELECTED_KEY, bench.preferences().now().look() == Look.DARK);
    }
}
