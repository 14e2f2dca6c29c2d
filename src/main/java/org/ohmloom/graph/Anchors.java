package org.ohmloom.graph;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.WireEnd;

/**
 * Where the ends of wires reach the breakouts of the physical harness.
 *
 * <p>A cavity is where its connector ends, else where the connector's component or its mate is reached. A splice along a
 * segment reaches both ends of the segment, over the stretch to each; beyond the segment's end counts as the end.
 */
final class Anchors {
    private final Harness harness;

    Anchors(Harness harness) {
        this.harness = harness;
    }

    /**
     * A breakout that a place reaches.
     *
     * @param breakout       the breakout
     * @param stretchMetres  length from the place to it, m
     * @param segment        the segment that stretch belongs to, if it has a length
     * @param positionMetres distance of the place from the segment's {@code from} end, m; 0 without a segment
     */
    record Anchor(BreakoutId breakout, double stretchMetres, Optional<SegmentId> segment, double positionMetres) {}

    /** The breakouts an end reaches: none, one, or the two ends of a segment. */
    List<Anchor> of(WireEnd end) {
        if (end instanceof WireEnd.AtCavity at) {
            return breakout(harness.breakout(harness.connectors().get(at.connector())));
        }
        if (end instanceof WireEnd.AtTerminal at) {
            return breakout(harness.components().get(at.component()).at());
        }
        if (end instanceof WireEnd.AtGround at) {
            return breakout(harness.grounds().get(at.ground()).at());
        }
        if (end instanceof WireEnd.AtSplice at) {
            return harness.splices().get(at.splice()).place().map(this::place).orElse(List.of());
        }
        return List.of();
    }

    private List<Anchor> place(Place place) {
        if (place instanceof Place.AtBreakout at) {
            return breakout(Optional.of(at.breakout()));
        }
        Place.OnSegment on = (Place.OnSegment) place;
        BundleSegment segment = harness.segments().get(on.segment());
        double fromMetres = Math.min(on.distanceMetres(), segment.lengthMetres());
        double toMetres = segment.lengthMetres() - fromMetres;
        if (fromMetres == 0) {
            return breakout(Optional.of(segment.from()));
        }
        if (toMetres == 0) {
            return breakout(Optional.of(segment.to()));
        }
        Optional<SegmentId> id = Optional.of(segment.id());
        return List.of(
                new Anchor(segment.from(), fromMetres, id, fromMetres),
                new Anchor(segment.to(), toMetres, id, fromMetres));
    }

    private static List<Anchor> breakout(Optional<BreakoutId> breakout) {
        return breakout.map(id -> List.of(new Anchor(id, 0, Optional.empty(), 0)))
                .orElse(List.of());
    }
}
