package org.ohmloom.draw;

import java.util.List;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.WireId;

/**
 * The way of a wire over the board. It runs along ties and passes breakouts in turn. An end at a breakout has that
 * breakout before the first tie; an end along a segment has that segment as its first tie instead.
 *
 * @param wire   the wire
 * @param from   where it begins
 * @param to     where it ends
 * @param ties   ties in order; may be empty when both ends are at one breakout
 * @param joints breakouts passed in order, the ends' own included
 */
record WirePath(WireId wire, Spot from, Spot to, List<Tie> ties, List<BreakoutId> joints) {

    WirePath {
        ties = List.copyOf(ties);
        joints = List.copyOf(joints);
    }
}
