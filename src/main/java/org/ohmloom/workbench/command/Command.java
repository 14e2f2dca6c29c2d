package org.ohmloom.workbench.command;

import java.awt.event.ActionEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import org.ohmloom.workbench.widget.Icons;

/**
 * One thing a person can ask for; menus, toolbar, keys and the command search all hold the same instance. A command that
 * makes no sense now is disabled and its tooltip says why.
 */
public abstract class Command extends AbstractAction {

    private static final long serialVersionUID = 1L;

    private final String id;
    private final String about;
    private transient Consumer<String> journal = what -> {};

    /**
     * A command.
     *
     * @param id    stable kebab-case text
     * @param name  what menus show
     * @param about what it does, one sentence for the tooltip
     */
    public Command(String id, String name, String about) {
        super(name);
        this.id = id;
        this.about = about;
        putValue(ACTION_COMMAND_KEY, id);
        putValue(SHORT_DESCRIPTION, about);
    }

    /** Does it. */
    public abstract void run();

    /** Brings name and readiness up to date; called after every change at the desk. */
    public void refresh() {}

    /** Stable kebab-case text. */
    public final String id() {
        return id;
    }

    public final String name() {
        return String.valueOf(getValue(NAME));
    }

    /** What it is called where it stands among all commands, away from its menu. */
    public String listed() {
        return name();
    }

    /** What it does, in a sentence. */
    public final String about() {
        return about;
    }

    public final Optional<KeyStroke> keys() {
        return Optional.ofNullable((KeyStroke) getValue(ACCELERATOR_KEY));
    }

    /** With keys of its own; null for none. */
    public final Command withKeys(@Nullable KeyStroke keys) {
        putValue(ACCELERATOR_KEY, keys);
        return this;
    }

    /** With the letter underlined in menus. */
    public final Command withMnemonic(char letter) {
        putValue(MNEMONIC_KEY, (int) letter);
        return this;
    }

    /** With an icon. */
    public final Command withIcon(String icon) {
        Icons.find(icon).ifPresent(found -> putValue(Action.SMALL_ICON, found));
        return this;
    }

    /** Ready, or not for a reason. */
    public final void setReady(boolean ready, String whyNot) {
        setEnabled(ready);
        putValue(SHORT_DESCRIPTION, ready ? about : about + " (" + whyNot + ")");
    }

    /** Notes every use, so that an error report can say what led to it. */
    public final void noteIn(Consumer<String> notes) {
        journal = notes;
    }

    @Override
    public final void actionPerformed(ActionEvent event) {
        journal.accept(name());
        run();
    }
}
