package org.ohmloom.bundle.splice;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.graph.Distances;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;

/**
 * A place a splice may lie at, as so far along a segment.
 *
 * @param segment the segment
 * @param metres  from its from end, m
 */
record Spot(BundleSegment segment, double metres) {

    private static final double AT_END_METRES = 1e-6;

    /** Whether any segment reaches a place. */
    static boolean isReached(Harness harness, Place place) {
        return place instanceof Place.OnSegment
                || harness.segments().all().stream()
                        .anyMatch(segment -> place.equals(new Place.AtBreakout(segment.from()))
                                || place.equals(new Place.AtBreakout(segment.to())));
    }

    /** A place of the harness; a breakout is the end of any segment there. */
    static Spot of(Harness harness, Place place) {
        if (place instanceof Place.OnSegment on) {
            BundleSegment segment = harness.segments().get(on.segment());
            return new Spot(segment, Math.min(on.distanceMetres(), segment.lengthMetres()));
        }
        BreakoutId breakout = ((Place.AtBreakout) place).breakout();
        for (BundleSegment segment : harness.segments().all()) {
            if (segment.from().equals(breakout)) {
                return new Spot(segment, 0);
            }
            if (segment.to().equals(breakout)) {
                return new Spot(segment, segment.lengthMetres());
            }
        }
        throw new IllegalArgumentException("no segment reaches " + breakout);
    }

    /** The place of the harness: a breakout at the ends of the segment. */
    Place place() {
        if (metres < AT_END_METRES) {
            return new Place.AtBreakout(segment.from());
        }
        return metres > segment.lengthMetres() - AT_END_METRES
                ? new Place.AtBreakout(segment.to())
                : new Place.OnSegment(segment.id(), metres);
    }

    /** Distance from an end, m; infinite where no way leads there. */
    double from(Distances distances) {
        return distances.to(segment, metres).orElse(Double.POSITIVE_INFINITY);
    }

    /** Where along a segment a distance that must be kept from an end begins, m; may lie outside it. */
    static List<Double> boundaries(BundleSegment segment, Distances distances, double keptMetres) {
        List<Double> along = new ArrayList<>();
        Double from = distances.toBreakouts().get(segment.from());
        Double to = distances.toBreakouts().get(segment.to());
        if (from != null) {
            along.add(keptMetres - from);
        }
        if (to != null) {
            along.add(segment.lengthMetres() - (keptMetres - to));
        }
        Double own = distances.along().get(segment.id());
        if (own != null) {
            along.add(own - keptMetres);
            along.add(own + keptMetres);
        }
        return along;
    }
}
