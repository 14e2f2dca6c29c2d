package org.ohmloom.tables;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;

/** Things of one kind by id, in the order they were put there. */
final class Shelf<T> {
    private final Text what;
    private final Map<String, T> byId = new LinkedHashMap<>();
    private final Map<String, String> fileById = new LinkedHashMap<>();

    /** @param what the kind of thing, for messages */
    Shelf(String what) {
        this.what = Refusals.text(what);
    }

    /** Puts a thing there; refuses an id that is taken. */
    void put(String id, T value, String fileName, int line) {
        String taken = fileById.putIfAbsent(id, fileName);
        if (taken != null) {
            throw new TableFormatException(
                    fileName,
                    line,
                    "id",
                    Refusals.text("the %s '%s' is already in %s; choose another name", what, id, taken));
        }
        byId.put(id, value);
    }

    Optional<T> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** The thing of that id. */
    T get(String id) {
        return find(id).orElseThrow(() ->
                new UnfitException("there is no %s '%s'; there are %s", what, id, String.join(", ", byId.keySet())));
    }

    List<T> all() {
        return List.copyOf(byId.values());
    }

    Collection<String> ids() {
        return byId.keySet();
    }
}
