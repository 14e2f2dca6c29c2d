package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/**
 * Places for cards at the ends of runs that lie already: as near to its end as it meets neither a run nor another card, straight on
 * rather than aside.
 */
final class CardSpots {

    private static final double STEP_MM = 20;
    private static final int MOST_STEPS = 400;
    private static final List<Integer> ASIDE_DEGREES = List.of(0, 15, -15, 30, -30, 45, -45, 60, -60, 75, -75, 90, -90);

    private final List<Extent> runBounds = new ArrayList<>();
    private final List<Capsule> runs = new ArrayList<>();
    private final List<Extent> taken = new ArrayList<>();

    /** Where the runs of a tree lie. */
    CardSpots(FormTree tree, Way[] ways) {
        for (int number = 0; number < ways.length; number++) {
            List<Point> points = ways[number].points();
            double reach = TreeLaying.reachMm(tree.runs().get(number));
            for (int k = 1; k < points.size(); k++) {
                runs.add(new Capsule(points.get(k - 1), points.get(k), reach, number));
                runBounds.add(Extent.around(points.subList(k - 1, k + 1)).grown(reach));
            }
        }
    }

    /**
     * Takes a place for a card.
     *
     * @param end     where its run ends
     * @param own     number of that run, which the card may come close to
     * @param degrees direction the run arrives in
     */
    Extent take(Point end, int own, double degrees, double widthMm, double heightMm) {
        Extent place = free(end, own, degrees, widthMm, heightMm);
        taken.add(place);
        return place;
    }

    private Extent free(Point end, int own, double degrees, double widthMm, double heightMm) {
        Extent last = WaySearch.card(end, degrees, widthMm, heightMm);
        for (int step = 0; step < MOST_STEPS; step++) {
            for (int aside : ASIDE_DEGREES) {
                double heading = Headings.normal(degrees + aside);
                last = WaySearch.card(Headings.from(end, heading, step * STEP_MM), heading, widthMm, heightMm);
                if (isFree(last, own)) {
                    return last;
                }
            }
        }
        return last;
    }

    private boolean isFree(Extent card, int own) {
        Extent wide = card.grown(WaySearch.CARD_GAP_MM / 2);
        if (taken.stream().anyMatch(wide::overlaps)) {
            return false;
        }
        List<Capsule> rows = Capsule.of(card, Room.CARD);
        for (int k = 0; k < runs.size(); k++) {
            Capsule run = runs.get(k);
            if (run.owner() != own
                    && runBounds.get(k).overlaps(card)
                    && rows.stream().anyMatch(run::meets)) {
                return false;
            }
        }
        return true;
    }
}
