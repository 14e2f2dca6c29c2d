package org.ohmloom.edit.board;

import java.util.Set;
import org.ohmloom.model.Position;

/**
 * A thing on the board with the room it takes.
 *
 * @param ids      ids it is placed by; a component shares one with the connectors at the same place
 * @param centre   its middle
 * @param widthMm  width, mm, 0 or more
 * @param heightMm height, mm, 0 or more
 */
public record Footprint(Set<String> ids, Position centre, double widthMm, double heightMm) {

    public Footprint {
        ids = Set.copyOf(ids);
    }

    double leftMm() {
        return centre.xMm() - widthMm / 2;
    }

    double rightMm() {
        return centre.xMm() + widthMm / 2;
    }

    double topMm() {
        return centre.yMm() - heightMm / 2;
    }

    double bottomMm() {
        return centre.yMm() + heightMm / 2;
    }
}
