package org.ohmloom.edit.board;

import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Position;

/** Where on the board something is put. */
public sealed interface Where {

    /**
     * At a breakout.
     *
     * @param breakout the breakout
     */
    record At(BreakoutId breakout) implements Where {}

    /**
     * In the open, where a breakout is made.
     *
     * @param position the place of that breakout
     */
    record InTheOpen(Position position) implements Where {}

    /** Nowhere yet: the harness is not laid out on a board. */
    record Nowhere() implements Where {}
}
