package org.ohmloom.workbench.drafting;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Reveal;
import org.ohmloom.workbench.words.Words;

/** The commands of drawing: every tool by itself, the grid, copying, arranging, and selecting everything. */
public final class DrawingCommands {

    /** The letter of each tool: alone on the layout, with Ctrl and Shift anywhere. */
    private static final Map<String, Integer> LETTERS = Map.ofEntries(
            Map.entry("select", KeyEvent.VK_A),
            Map.entry("lasso", KeyEvent.VK_L),
            Map.entry("component", KeyEvent.VK_C),
            Map.entry("connector", KeyEvent.VK_X),
            Map.entry("breakout", KeyEvent.VK_B),
            Map.entry("ground", KeyEvent.VK_G),
            Map.entry("segment", KeyEvent.VK_E),
            Map.entry("wire", KeyEvent.VK_I),
            Map.entry("splice", KeyEvent.VK_J),
            Map.entry("zone", KeyEvent.VK_O),
            Map.entry("hang", KeyEvent.VK_H));

    private DrawingCommands() {}

    /** The commands; the keys that hold on the layout alone are put on it. */
    public static List<Command> of(Toolbox box) {
        List<Command> all = new ArrayList<>();
        for (String key : box.keys()) {
            int letter = Objects.requireNonNull(LETTERS.get(key), key);
            all.add(new TakeTool(box, key).withKeys(Keys.menuShift(letter)));
            onLayout(box, Keys.plain(letter), "tool-" + key, () -> box.take(key));
        }
        all.add(new SwitchGrid(box).withKeys(Keys.menuShift(KeyEvent.VK_R)));
        all.addAll(copying(box));
        for (Arranging each : Arranging.values()) {
            all.add(new OnSelection(box, each.id(), each.least(), () -> box.arrange(each)));
        }
        all.add(new OnSelection(box, "select-all", 0, () -> {
            Reveal.inFront(box.canvas()).requestFocusInWindow();
            box.selectAll();
        }));
        onLayout(box, Keys.menu(KeyEvent.VK_A), "select-all", box::selectAll);
        onLayout(box, Keys.plain(KeyEvent.VK_DELETE), "take-out", box::takeOut);
        return all;
    }

    /** The keys of copying hold on the layout alone: in texts and lists they copy those. */
    private static List<Command> copying(Toolbox box) {
        Copying copying = box.copying();
        onLayout(box, Keys.menu(KeyEvent.VK_X), "board-cut", copying::cut);
        onLayout(box, Keys.menu(KeyEvent.VK_C), "board-copy", copying::copy);
        onLayout(box, Keys.menu(KeyEvent.VK_V), "board-paste", copying::paste);
        onLayout(box, Keys.menu(KeyEvent.VK_D), "duplicate", copying::duplicate);
        return List.of(
                new OnSelection(box, "board-cut", 1, copying::cut),
                new OnSelection(box, "board-copy", 1, copying::copy),
                new OnSelection(box, "board-paste", 0, copying::paste),
                new OnSelection(box, "duplicate", 1, copying::duplicate));
    }

    private static void onLayout(Toolbox box, KeyStroke keys, String name, Runnable task) {
        Keys.bind(box.canvas(), JComponent.WHEN_FOCUSED, keys, name, task);
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

    /** Does something with what is selected. */
    private static final class OnSelection extends OnBoard {
        private static final long serialVersionUID = 1L;

        private final int least;
        private final transient Runnable task;

        OnSelection(Toolbox box, String id, int least, Runnable task) {
            super(box, id);
            this.least = least;
            this.task = task;
            refresh();
        }

        @Override
        public void run() {
            task.run();
        }

        @Override
        public void refresh() {
            super.refresh();
            if (isEnabled() && box().easel().selected().size() < least) {
                setReady(false, box().easel().words().get("select-more", String.valueOf(least)));
            }
        }
    }
}
