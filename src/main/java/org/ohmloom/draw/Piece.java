package org.ohmloom.draw;

import java.util.List;
import java.util.Optional;

/** Measures a piece of a drawing. */
final class Piece {

    private Piece() {}

    /** The smallest rectangle around marks, if there are any. */
    static Optional<Extent> bounds(List<Item> items) {
        return Extent.union(items.stream().map(item -> item.mark().bounds()).toList());
    }
}
