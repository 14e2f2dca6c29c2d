package org.ohmloom.draw;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Connector;

/**
 * What holds two breakouts together on the board: a bundle segment, or an in-line pair of connectors.
 *
 * @param id           id of the segment, or of the first connector of the pair
 * @param from         one breakout
 * @param to           the other
 * @param lengthMetres length, m; 0 for an in-line pair
 * @param segment      the segment, unless it is an in-line pair
 * @param pair         the connectors at {@code from} and at {@code to}, empty for a segment
 */
record Tie(
        String id,
        BreakoutId from,
        BreakoutId to,
        double lengthMetres,
        Optional<BundleSegment> segment,
        List<Connector> pair) {

    static Tie of(BundleSegment segment) {
        return new Tie(
                segment.id().value(),
                segment.from(),
                segment.to(),
                segment.lengthMetres(),
                Optional.of(segment),
                List.of());
    }

    static Tie of(Connector one, BreakoutId from, Connector other, BreakoutId to) {
        return new Tie(one.id().value(), from, to, 0, Optional.empty(), List.of(one, other));
    }

    BreakoutId other(BreakoutId end) {
        return end.equals(from) ? to : from;
    }

    boolean touches(BreakoutId end) {
        return end.equals(from) || end.equals(to);
    }
}
