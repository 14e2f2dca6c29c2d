package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javax.swing.JComponent;
import org.ohmloom.workbench.command.Command;

/** The commands that move the keyboard between views. */
public final class PaneCommands {

    private PaneCommands() {}

    /** A command for each view, in order, one for the next, and one for the dividers between them. */
    public static List<Command> of(Map<String, Supplier<JComponent>> targets) {
        List<Command> all = new ArrayList<>();
        targets.forEach((name, target) -> all.add(new FocusPane(name, KeyEvent.VK_1 + all.size(), target)));
        all.add(new NextPane(List.copyOf(targets.values())));
        all.add(new MoveDivider());
        return all;
    }
}
