package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/**
 * Moves cards that the edge of a tile would cut: as little as lets one tile show all of the card, where it meets neither a bundle nor
 * another card. A card for which there is no such place stays.
 */
final class CardShift {

    private static final double STEP_MM = 6;
    private static final int MOST_STEPS = 34;
    private static final List<Point> MOVES = moves();

    private final FormPlan plan;
    private final TileGrid grid;
    private final List<Capsule> runs = new ArrayList<>();
    private final List<Extent> runBounds = new ArrayList<>();
    private final List<Extent> cards = new ArrayList<>();

    private CardShift(FormPlan plan, TileGrid grid) {
        this.plan = plan;
        this.grid = grid;
        for (Laid laid : plan.laid()) {
            for (int number = 0; number < laid.ways().size(); number++) {
                List<Point> points = laid.ways().get(number).points();
                double reach = TreeLaying.reachMm(laid.tree().runs().get(number));
                for (int k = 1; k < points.size(); k++) {
                    runs.add(new Capsule(points.get(k - 1), points.get(k), reach, number));
                    runBounds.add(Extent.around(points.subList(k - 1, k + 1)).grown(reach));
                }
            }
            laid.cards().forEach(card -> card.ifPresent(cards::add));
        }
    }

    /** The plan with its cards where tiles show them whole. */
    static FormPlan of(FormPlan plan, TileGrid grid) {
        CardShift shift = new CardShift(plan, grid);
        List<Laid> laid = new ArrayList<>();
        for (Laid each : plan.laid()) {
            laid.add(each.withCards(
                    each.cards().stream().map(card -> card.map(shift::whole)).toList()));
        }
        return plan.withLaid(laid);
    }

    private Extent whole(Extent card) {
        if (grid.shows(card)) {
            return card;
        }
        Optional<Extent> place = MOVES.stream()
                .map(move -> card.moved(move.xMm(), move.yMm()))
                .filter(each -> grid.shows(each) && touchesItsTile(each, card) && isFree(each, card))
                .findFirst();
        place.ifPresent(each -> cards.set(cards.indexOf(card), each));
        return place.orElse(card);
    }

    /** Whether the tile of the new place showed some of the old one: no other sheet is used for it. */
    private boolean touchesItsTile(Extent place, Extent card) {
        int[] tile = grid.tileAt(place.centre());
        return grid.cell(tile[0], tile[1]).overlaps(card);
    }

    private boolean isFree(Extent place, Extent card) {
        Extent board = new Extent(0, 0, plan.widthMm(), plan.heightMm());
        Extent wide = place.grown(WaySearch.CARD_GAP_MM / 2);
        if (!board.contains(place) || cards.stream().anyMatch(each -> !each.equals(card) && each.overlaps(wide))) {
            return false;
        }
        List<Capsule> rows = Capsule.of(place, Room.CARD);
        for (int k = 0; k < runs.size(); k++) {
            Capsule run = runs.get(k);
            if (runBounds.get(k).overlaps(place) && rows.stream().anyMatch(run::meets)) {
                return false;
            }
        }
        return true;
    }

    /** Ways to move, the shortest first. */
    private static List<Point> moves() {
        List<Point> moves = new ArrayList<>();
        for (int x = -MOST_STEPS; x <= MOST_STEPS; x++) {
            for (int y = -MOST_STEPS; y <= MOST_STEPS; y++) {
                moves.add(new Point(x * STEP_MM, y * STEP_MM));
            }
        }
        moves.sort(Comparator.comparingDouble((Point move) -> Math.hypot(move.xMm(), move.yMm()))
                .thenComparingDouble(Point::xMm)
                .thenComparingDouble(Point::yMm));
        return List.copyOf(moves);
    }
}
