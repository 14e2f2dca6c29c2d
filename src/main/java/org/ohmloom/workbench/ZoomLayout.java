package org.ohmloom.workbench;

import java.awt.event.KeyEvent;

/** Shows the layout larger or smaller. */
final class ZoomLayout extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final int steps;

    private ZoomLayout(Bench bench, int steps, String id, String name) {
        super(id, name, "Show the layout " + (steps > 0 ? "larger" : "smaller"));
        this.bench = bench;
        this.steps = steps;
    }

    static Command larger(Bench bench) {
        return new ZoomLayout(bench, 1, "zoom-in", "Zoom in")
                .withKeys(Keys.menu(KeyEvent.VK_EQUALS))
                .withMnemonic('I')
                .withIcon("zoom-in");
    }

    static Command smaller(Bench bench) {
        return new ZoomLayout(bench, -1, "zoom-out", "Zoom out")
                .withKeys(Keys.menu(KeyEvent.VK_MINUS))
                .withMnemonic('O')
                .withIcon("zoom-out");
    }

    @Override
    void run() {
        bench.views().canvas().zoom(steps);
    }

    @Override
    void refresh() {
        setReady(bench.desk().document().isPresent(), "no harness is open");
    }
}
