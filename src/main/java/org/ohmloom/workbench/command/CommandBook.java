package org.ohmloom.workbench.command;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.Keys;

/** Every command once, by its id; menus, toolbar, keys and the command search are made from it. */
public final class CommandBook {

    private final Map<String, Command> byId;

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
