package org.ohmloom.workbench;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javax.swing.JComponent;

/** The commands that move the keyboard between views. */
final class PaneCommands {

    private PaneCommands() {}

    /** A command for each view, in order, and one for the next. */
    static List<Command> of(Map<String, Supplier<JComponent>> targets) {
        List<Command> all = new ArrayList<>();
        targets.forEach((name, target) -> all.add(new FocusPane(name, KeyEvent.VK_1 + all.size(), target)));
        all.add(new NextPane(List.copyOf(targets.values())));
        return all;
    }
}
