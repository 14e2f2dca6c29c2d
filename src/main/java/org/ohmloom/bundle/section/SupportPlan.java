package org.ohmloom.bundle.section;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.tables.Citation;

/**
 * Where a segment is clipped to the vehicle and where ties go round it; nowhere when no wire lies in it.
 *
 * @param supportMetres    places of the supports from the segment's from end, m
 * @param spacingMetres    most distance between supports, m
 * @param spacingSource    the row of that distance
 * @param tieMetres        places of the ties, m: along an uncovered bundle, otherwise on the near side of each breakout
 * @param tieSource        the row of the ties' distance
 */
public record SupportPlan(
        List<Double> supportMetres,
        double spacingMetres,
        String spacingSource,
        List<Double> tieMetres,
        String tieSource) {

    /** Ties at the ends lie so far from the breakout, m: common practice, no source. */
    private static final double FROM_BREAKOUT_METRES = 0.02;

    private static final double NOISE_RATIO = 1e-9;

    /** No list of places is longer than this, however long a segment is said to be. */
    static final int MOST_PLACES = 10_000;

    public SupportPlan {
        supportMetres = List.copyOf(supportMetres);
        tieMetres = List.copyOf(tieMetres);
    }

    /**
     * Spaces supports so that none is further from the next than allowed, also across a breakout: half a distance from each
     * end.
     */
    static List<Double> spread(double lengthMetres, double mostMetres) {
        int count = (int) Math.min(MOST_PLACES, Math.max(1, Math.ceil(lengthMetres / mostMetres - NOISE_RATIO)));
        List<Double> places = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            places.add((k + 0.5) * lengthMetres / count);
        }
        return places;
    }

    /** One tie on the near side of each breakout. */
    static List<Double> atEnds(double lengthMetres) {
        double inset = Math.min(FROM_BREAKOUT_METRES, lengthMetres / 4);
        return List.of(inset, lengthMetres - inset);
    }

    /** Source of ties beside breakouts. */
    static String besideBreakouts(Citation spacing) {
        return "a tie on both sides of a breakout, as NASA Workmanship Standards Book 4, 4.02; distances as "
                + spacing.text();
    }
}
