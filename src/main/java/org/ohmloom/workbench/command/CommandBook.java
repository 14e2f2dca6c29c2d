package org.ohmloom.workbench.command;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.Keys;

/** Every command once, by its id; menus, toolbar, keys and the command search are made from it. */
public final class CommandBook {

    private final Map<String, Command> byId;
    private final Map<String, KeyStroke> usual = new LinkedHashMap<>();

    /**
     * A book.
     *
     * @throws IllegalArgumentException when two commands share an id or their keys
     */
    public CommandBook(List<Command> commands, Desk desk, Consumer<String> journal) {
        Map<String, Command> ids = new LinkedHashMap<>();
        Map<Object, Command> keys = new LinkedHashMap<>();
        for (Command command : commands) {
            if (ids.put(command.id(), command) != null) {
                throw new IllegalArgumentException("two commands are called '" + command.id() + "'");
            }
            command.keys().ifPresent(stroke -> {
                usual.put(command.id(), stroke);
                Command other = keys.put(stroke, command);
                if (other != null) {
                    throw new IllegalArgumentException(
                            command.id() + " and " + other.id() + " share " + Keys.text(stroke));
                }
            });
            command.noteIn(journal);
        }
        byId = Collections.unmodifiableMap(ids);
        desk.listen(topic -> refresh());
        refresh();
    }

    /**
     * Gives commands other keys than their usual ones.
     *
     * @param changed keys by id of the command, as {@link KeyStroke} writes them, blank for none; an unknown id is passed
     *                over, what cannot be read is none, and usual keys go before changed ones where both ask for the same
     */
    public void rebind(Map<String, String> changed) {
        Map<KeyStroke, Command> taken = new LinkedHashMap<>();
        byId.forEach((id, command) -> {
            if (!changed.containsKey(id)) {
                give(command, usual.get(id), taken);
            }
        });
        byId.forEach((id, command) -> {
            if (changed.containsKey(id)) {
                give(command, KeyStroke.getKeyStroke(changed.get(id)), taken);
            }
        });
    }

    private static void give(Command command, @Nullable KeyStroke keys, Map<KeyStroke, Command> taken) {
        boolean free = keys != null && taken.putIfAbsent(keys, command) == null;
        command.withKeys(free ? keys : null);
    }

    /** The keys a command has when nobody changed them. */
    public Optional<KeyStroke> usualKeys(String id) {
        return Optional.ofNullable(usual.get(id));
    }

    /** The commands in the order of the menus. */
    public List<Command> all() {
        return List.copyOf(byId.values());
    }

    /**
     * The command of that id.
     *
     * @throws IllegalArgumentException when there is none
     */
    public Command get(String id) {
        Command found = byId.get(id);
        if (found == null) {
            throw new IllegalArgumentException("no command '" + id + "'");
        }
        return found;
    }

    private void refresh() {
        byId.values().forEach(Command::refresh);
    }
}
