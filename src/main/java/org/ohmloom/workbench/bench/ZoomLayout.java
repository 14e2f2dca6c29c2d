package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Shows the layout larger or smaller. */
public final class ZoomLayout extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final int steps;

    private ZoomLayout(Bench bench, int steps, String id, String name) {
        super(
                id,
                name,
                WORDS.get(
                        "zoom-layout.show-the-layout",
                        steps > 0 ? WORDS.get("zoom-layout.larger") : WORDS.get("zoom-layout.smaller")));
        this.bench = bench;
        this.steps = steps;
    }

    public static Command larger(Bench bench) {
        return new ZoomLayout(bench, 1, "zoom-in", WORDS.get("zoom-layout.zoom-in"))
                .withKeys(Keys.menu(KeyEvent.VK_EQUALS))
                .withMnemonic('I')
                .withIcon("zoom-in");
    }

    public static Command smaller(Bench bench) {
        return new ZoomLayout(bench, -1, "zoom-out", WORDS.get("zoom-layout.zoom-out"))
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
        setReady(bench.desk().document().isPresent(), WORDS.get("zoom-layout.no-harness-is-open"));
    }
}
