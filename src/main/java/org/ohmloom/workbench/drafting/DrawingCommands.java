package org.ohmloom.workbench.drafting;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.JComponent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Reveal;
import org.ohmloom.workbench.words.Words;

/** The commands of the tools: every tool by itself, the grid, and selecting everything. */
public final class DrawingCommands {

    /** The letter of each tool: alone on the layout, with Ctrl and Shift anywhere. */
    private static final Map<String, Integer> LETTERS = Map.of(
            "select", KeyEvent.VK_A,
            "lasso", KeyEvent.VK_L,
            "component", KeyEvent.VK_C,
            "connector", KeyEvent.VK_K,
            "breakout", KeyEvent.VK_B,
            "ground", KeyEvent.VK_G,
            "segment", KeyEvent.VK_E,
            "wire", KeyEvent.VK_W,
            "splice", KeyEvent.VK_J,
            "zone", KeyEvent.VK_O);

    private DrawingCommands() {}

    /** The commands; the keys that hold on the layout alone are put on it. */
    public static List<Command> of(Toolbox box) {
        List<Command> all = new ArrayList<>();
        for (String key : box.keys()) {
            all.add(new TakeTool(box, key).withKeys(Keys.menuShift(LETTERS.get(key))));
            onLayout(box, LETTERS.get(key), "tool-" + key, () -> box.take(key));
        }
        all.add(new SwitchGrid(box).withKeys(Keys.menuShift(KeyEvent.VK_R)));
        all.add(new SelectAll(box));
        Keys.bind(box.canvas(), JComponent.WHEN_FOCUSED, Keys.menu(KeyEvent.VK_A), "select-all", box::selectAll);
        return all;
    }

    private static void onLayout(Toolbox box, int key, String name, Runnable task) {
        Keys.bind(box.canvas(), JComponent.WHEN_FOCUSED, Keys.plain(key), name, task);
    }

    /** A command of the drawing words, ready while a harness is open. */
    abstract static class OnBoard extends Command {
        private static final long serialVersionUID = 1L;

        private final transient Toolbox box;

        OnBoard(Toolbox box, String id) {
            super(id, words(box).get(id), words(box).get(id + ".about"));
            this.box = box;
            withMnemonic(words(box).letter(id));
        }

        private static Words words(Toolbox box) {
            return box.easel().words();
        }

        Toolbox box() {
            return box;
        }

        @Override
        public void refresh() {
            setReady(box.easel().harness().isPresent(), words(box).get("no-harness"));
        }
    }

    /** Takes a tool in hand. */
    private static final class TakeTool extends OnBoard {
        private static final long serialVersionUID = 1L;

        private final String key;

        TakeTool(Toolbox box, String key) {
            super(box, "tool-" + key);
            this.key = key;
            withIcon("tool-" + key);
            box.listen(this::refresh);
            refresh();
        }

        @Override
        public void run() {
            box().take(key);
        }

        @Override
        public void refresh() {
            super.refresh();
            putValue(SELECTED_KEY, box().current().key().equals(key));
        }
    }

    /** Switches the grid on or off. */
    private static final class SwitchGrid extends OnBoard {
        private static final long serialVersionUID = 1L;

        SwitchGrid(Toolbox box) {
            super(box, "snap-grid");
            withIcon("grid");
            box.listen(this::refresh);
            refresh();
        }

        @Override
        public void run() {
            box().easel().grid(box().easel().grid().switched());
        }

        @Override
        public void refresh() {
            super.refresh();
            putValue(SELECTED_KEY, box().easel().grid().on());
        }
    }

    /** Selects everything on the layout. */
    private static final class SelectAll extends OnBoard {
        private static final long serialVersionUID = 1L;

        SelectAll(Toolbox box) {
            super(box, "select-all");
            refresh();
        }

        @Override
        public void run() {
            Reveal.inFront(box().canvas()).requestFocusInWindow();
            box().selectAll();
        }
    }
}
