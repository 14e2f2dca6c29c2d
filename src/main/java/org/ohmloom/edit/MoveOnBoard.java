package org.ohmloom.edit;

import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.words.Text;

/**
 * Places elements on the layout board.
 *
 * @param label     what that does
 * @param positions new positions by id
 * @param merging   moves of one name, made one after the other, count as one step; empty for one that never merges
 */
public record MoveOnBoard(Text label, SortedMap<String, Position> positions, Optional<String> merging) implements Edit {

    /** A move that is a step by itself. */
    public MoveOnBoard(Text label, SortedMap<String, Position> positions) {
        this(label, positions, Optional.empty());
    }

    @Override
    public Harness apply(Harness before) {
        SortedMap<String, Position> changed = new TreeMap<>(before.layout());
        changed.putAll(positions);
        return changed.equals(before.layout()) ? before : before.withLayout(changed);
    }

    @Override
    public @Nullable Object mergeKey() {
        return merging.orElse(null);
    }
}
