package org.ohmloom.edit.board;

import java.util.HashSet;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.words.Text;

/**
 * An edit after which everything stands where it stood: what the board laid out by itself keeps its place from then on.
 *
 * @param places where things stand now, by id; those the harness has a position for do not count
 * @param edit   the edit
 */
public record Pinned(SortedMap<String, Position> places, Edit edit) implements Edit {

    @Override
    public Text label() {
        return edit.label();
    }

    @Override
    public Harness apply(Harness before) {
        SortedMap<String, Position> all = new TreeMap<>(places);
        Set<String> known = new HashSet<>();
        before.elements().forEach(element -> known.add(element.id().value()));
        all.keySet().retainAll(known);
        all.putAll(before.layout());
        Harness still = all.equals(before.layout()) ? before : before.withLayout(all);
        Harness after = edit.apply(still);
        return after == still ? before : after;
    }

    @Override
    public @Nullable Object mergeKey() {
        return edit.mergeKey();
    }
}
