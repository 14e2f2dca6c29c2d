package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;

/** Shows the layout larger or smaller. */
public final class ZoomLayout extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final int steps;

    private ZoomLayout(Bench bench, int steps, String id, String name) {
        super(id, name, "Show the layout " + (steps > 0 ? "larger" : "smaller"));
        this.bench = bench;
        this.steps = steps;
    }

    public static Command larger(Bench bench) {
        return new ZoomLayout(bench, 1, "zoom-in", "Zoom in")
                .withKeys(Keys.menu(KeyEvent.VK_EQUALS))
                .withMnemonic('I')
                .withIcon("zoom-in");
    }

    public static Command smaller(Bench bench) {
        return new ZoomLayout(bench, -1, "zoom-out", "Zoom out")
                .withKeys(Keys.menu(KeyEvent.VK_MINUS))
                .withMnemonic('O')
                .withIcon("zoom-out");
    }

    @Override
    public void run() {
        bench.views().canvas().zoom(steps);
    }

    @Override
    public void refresh() {
        setReady(bench.desk().document().isPresent(), "no harness is open");
    }
}
