package org.ohmloom.workbench.window;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.KeyStroke;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.ReadyCommand;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Open another window, show the same harness in one, close a window, quit. */
final class WindowCommands {

    private WindowCommands() {}

    static List<Command> of(WindowActions actions, Desk desk) {
        Words words = Words.of("windows");
        return List.of(
                new ReadyCommand(words, "new-window", () -> true, "", actions.another())
                        .withKeys(KeyStroke.getKeyStroke(KeyEvent.VK_N, Keys.menuMask() | InputEvent.ALT_DOWN_MASK)),
                new ReadyCommand(
                        words,
                        "same-in-window",
                        () -> desk.document().isPresent() && !desk.isSideCopy(),
                        words.get("not-ready.same"),
                        () -> desk.document().ifPresent(actions.share())),
                new ReadyCommand(words, "close-window", () -> true, "", actions.close())
                        .withKeys(Keys.menuShift(KeyEvent.VK_W)),
                new ReadyCommand(words, "quit", () -> true, "", actions.quit()).withKeys(Keys.menu(KeyEvent.VK_Q)));
    }
}
