package org.ohmloom.workbench;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Supplier;

/** The commands that show something in a dialog. */
final class HelpCommands {

    private HelpCommands() {}

    /**
     * The commands.
     *
     * @param parent the window
     * @param view   the view in it, once it is there
     */
    static List<Command> of(Supplier<Component> parent, Supplier<WorkbenchView> view) {
        return List.of(
                new PlainCommand(
                        "show-log",
                        "Calculation log",
                        "Show how the numbers came about, step by step",
                        Keys.menu(KeyEvent.VK_L),
                        'L',
                        () -> TextDialogs.log(parent.get(), view.get().desk())),
                new PlainCommand(
                        "find-command",
                        "Find a command…",
                        "Type a few letters of what you want to do",
                        Keys.menuShift(KeyEvent.VK_P),
                        'F',
                        () -> CommandSearch.show(parent.get(), view.get().book())),
                new PlainCommand(
                        "show-keys",
                        "Keys",
                        "Show every command with its keys",
                        Keys.plain(KeyEvent.VK_F1),
                        'K',
                        () -> TextDialogs.keys(parent.get(), view.get().book())),
                new PlainCommand(
                        "show-cautions",
                        "Cautions",
                        "Show what to know before relying on a result",
                        Keys.shift(KeyEvent.VK_F1),
                        'C',
                        () -> TextDialogs.cautions(parent.get())),
                new PlainCommand(
                        "about",
                        "About Ohmloom",
                        "Show version and licences",
                        Keys.menu(KeyEvent.VK_I),
                        'A',
                        () -> TextDialogs.about(parent.get())));
    }
}
