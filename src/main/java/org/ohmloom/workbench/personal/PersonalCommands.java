package org.ohmloom.workbench.personal;

import java.awt.Component;
import java.awt.Dialog;
import java.awt.EventQueue;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.CommandBook;
import org.ohmloom.workbench.command.PlainCommand;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.widget.Keys;
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
                        () -> show(parent, words.get("settings.title"), dialog -> {
                            dialog.setContentPane(new SettingsPane(
                                    preferences,
                                    book.get(),
                                    // Later: a field must not lose its look amid its own event.
                                    () -> EventQueue.invokeLater(() -> {
                                        apply.run();
                                        dialog.pack();
                                    })));
                            return new JButton();
                        })));
    }

    /** Fills a dialog; gives its default button. */
    @FunctionalInterface
    private interface Filling {
        JButton fill(JDialog dialog);
    }

    private static void show(Supplier<Component> parent, String title, Filling filling) {
        JDialog dialog =
                new JDialog(SwingUtilities.getWindowAncestor(parent.get()), title, Dialog.ModalityType.DOCUMENT_MODAL);
        JButton button = filling.fill(dialog);
        dialog.setName("personal");
        dialog.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        if (button.getParent() != null) {
            dialog.getRootPane().setDefaultButton(button);
        }
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> dialog.dispose(), Keys.plain(KeyEvent.VK_ESCAPE), JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.pack();
        dialog.setLocationRelativeTo(dialog.getOwner());
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
                desk.document()
                        .ifPresent(open -> show(parent, words.get("changes.title", open.name()), dialog -> {
                            ChangesPane pane = new ChangesPane(open.session(), dialog::dispose);
                            dialog.setContentPane(pane);
                            return pane.goButton();
                        }));
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
