package org.ohmloom.edit;

import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;

/**
 * Places elements on the layout board.
 *
 * @param positions new positions by id
 */
public record MoveOnBoard(SortedMap<String, Position> positions) implements Edit {

    @Override
    public String label() {
        return "Move " + Subjects.text(positions.keySet(), "elements");
    }

    @Override
    public Harness apply(Harness before) {
        SortedMap<String, Position> changed = new TreeMap<>(before.layout());
        changed.putAll(positions);
        return changed.equals(before.layout()) ? before : before.withLayout(changed);
    }
}
