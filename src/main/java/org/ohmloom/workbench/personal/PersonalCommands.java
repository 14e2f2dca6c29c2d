package org.ohmloom.workbench.personal;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.KeyStroke;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.CommandBook;
import org.ohmloom.workbench.command.PlainCommand;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.words.Words;

/** The commands that show the list of changes and the settings. */
public final class PersonalCommands {

    private PersonalCommands() {}

    /**
     * The commands.
     *
     * @param parent what their windows are shown over
     * @param book   all commands, once they are there
     * @param apply  puts on what is settled
     * @param commit takes over what is being typed; whether that could be done
     */
    public static List<Command> of(
            Supplier<Component> parent,
            Desk desk,
            PreferenceStore preferences,
            Supplier<CommandBook> book,
            Runnable apply,
            Supplier<Boolean> commit) {
        Words words = Words.of("personal");
        return List.of(
                new ChangeList(parent, desk, words, commit),
                new PlainCommand(
                        "settings",
                        words.get("settings"),
                        words.get("settings.about"),
                        Keys.menu(KeyEvent.VK_COMMA),
                        words.letter("settings"),
                        () -> showSettings(parent.get(), preferences, book.get(), apply)));
    }

    private static PaneDialog dialog(Component parent, String title) {
        return new PaneDialog(parent, "personal", title);
    }

    private static void showSettings(Component parent, PreferenceStore preferences, CommandBook book, Runnable apply) {
        PaneDialog dialog = dialog(parent, Words.of("personal").get("settings.title"));
        // Later: a field must not lose its look amid its own event.
        Runnable later = () -> EventQueue.invokeLater(() -> {
            apply.run();
            dialog.pack();
        });
        dialog.fill(new SettingsPane(preferences, book, later));
        dialog.setVisible(true);
    }

    /** Shows the changes by name to go back or forward several at once. */
    private static final class ChangeList extends Command {
        private static final long serialVersionUID = 1L;
        private final transient Supplier<Component> parent;
        private final transient Desk desk;
        private final transient Words words;
        private final transient Supplier<Boolean> commit;

        ChangeList(Supplier<Component> parent, Desk desk, Words words, Supplier<Boolean> commit) {
            super("change-list", words.get("change-list"), words.get("change-list.about"));
            this.parent = parent;
            this.desk = desk;
            this.words = words;
            this.commit = commit;
            withKeys(KeyStroke.getKeyStroke(KeyEvent.VK_Z, Keys.menuMask() | InputEvent.ALT_DOWN_MASK))
                    .withMnemonic(words.letter("change-list"));
        }

        @Override
        public void run() {
            if (commit.get()) {
                desk.document().ifPresent(open -> {
                    PaneDialog dialog = dialog(parent.get(), words.get("changes.title", open.name()));
                    ChangesPane pane = new ChangesPane(open.session(), desk.units()::text, dialog::dispose);
                    dialog.fill(pane, pane.goButton());
                    dialog.setVisible(true);
                });
            }
        }

        @Override
        public void refresh() {
            boolean any = desk.document()
                    .filter(open -> !open.session().steps().isEmpty())
                    .isPresent();
            setReady(any, words.get("changes.none"));
        }
    }
}
