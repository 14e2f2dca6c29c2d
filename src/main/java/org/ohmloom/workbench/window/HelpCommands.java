package org.ohmloom.workbench.window;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Supplier;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.CommandSearch;
import org.ohmloom.workbench.command.PlainCommand;
import org.ohmloom.workbench.manual.ManualDesk;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** The commands that show something in a dialog. */
public final class HelpCommands {

    private HelpCommands() {}

    /**
     * The commands.
     *
     * @param parent the window
     * @param view   the view in it, once it is there
     * @param manual opens the manual
     */
    public static List<Command> of(Supplier<Component> parent, Supplier<WorkbenchView> view, ManualDesk manual) {
        Words words = Words.of("help");
        return List.of(
                new PlainCommand(
                        "show-log",
                        words.get("show-log"),
                        words.get("show-log.about"),
                        Keys.menu(KeyEvent.VK_L),
                        words.letter("show-log"),
                        () -> TextDialogs.log(parent.get(), view.get().desk())),
                new PlainCommand(
                        "help-here",
                        words.get("help-here"),
                        words.get("help-here.about"),
                        Keys.plain(KeyEvent.VK_F1),
                        words.letter("help-here"),
                        manual::openHere),
                new PlainCommand(
                        "open-manual",
                        words.get("open-manual"),
                        words.get("open-manual.about"),
                        Keys.menu(KeyEvent.VK_K),
                        words.letter("open-manual"),
                        manual::open),
                new PlainCommand(
                        "find-command",
                        words.get("find-command"),
                        words.get("find-command.about"),
                        Keys.menuShift(KeyEvent.VK_P),
                        words.letter("find-command"),
                        () -> CommandSearch.show(parent.get(), view.get().book())),
                new PlainCommand(
                        "show-keys",
                        words.get("show-keys"),
                        words.get("show-keys.about"),
                        Keys.menuShift(KeyEvent.VK_F1),
                        words.letter("show-keys"),
                        () -> TextDialogs.keys(parent.get(), view.get().book())),
                new PlainCommand(
                        "show-cautions",
                        words.get("show-cautions"),
                        words.get("show-cautions.about"),
                        Keys.shift(KeyEvent.VK_F1),
                        words.letter("show-cautions"),
                        () -> TextDialogs.cautions(parent.get())),
                new PlainCommand(
                        "about",
                        words.get("about"),
                        words.get("about.about"),
                        Keys.menu(KeyEvent.VK_I),
                        words.letter("about"),
                        () -> TextDialogs.about(parent.get())));
    }
}
