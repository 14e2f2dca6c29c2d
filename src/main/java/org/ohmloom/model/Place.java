package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;

/** A place on the physical harness. */
public sealed interface Place {

    /**
     * At a breakout.
     *
     * @param breakout the breakout
     */
    record AtBreakout(BreakoutId breakout) implements Place {}

    /**
     * Along a bundle segment.
     *
     * @param segment        the segment
     * @param distanceMetres distance from the segment's {@code from} end, m, 0 or more
     */
    record OnSegment(SegmentId segment, double distanceMetres) implements Place {
        public OnSegment {
            notNegative(distanceMetres, "distance along segment %s", segment);
        }
    }
}
