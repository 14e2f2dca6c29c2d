package org.ohmloom.workbench.drafting;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.edit.board.Arrangement;
import org.ohmloom.edit.board.Footprint;
import org.ohmloom.model.Position;

/** Ways to arrange what is selected. */
enum Arranging {
    ALIGN_LEFT(2),
    ALIGN_CENTRE(2),
    ALIGN_RIGHT(2),
    ALIGN_TOP(2),
    ALIGN_MIDDLE(2),
    ALIGN_BOTTOM(2),
    SHARE_ACROSS(3),
    SHARE_DOWN(3),
    MIRROR_ACROSS(2),
    MIRROR_DOWN(2),
    TURN_CLOCKWISE(2),
    TURN_ANTICLOCKWISE(2),
    PUT_ON_GRID(1);

    private final int least;

    Arranging(int least) {
        this.least = least;
    }

    /** The id of its command. */
    String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** How many things it needs. */
    int least() {
        return least;
    }

    /**
     * The new places of some things; a breakout takes the cards that hang there along. Empty when there are too few of them.
     *
     * @param ids    what is selected
     * @param gridMm distance of the lines of the grid, mm
     */
    Optional<SortedMap<String, Position>> of(BoardPlaces places, List<String> ids, double gridMm) {
        Set<String> chosen = Set.copyOf(ids);
        List<Footprint> all = places.moving(chosen);
        List<Footprint> own = all.stream()
                .filter(each -> each.ids().stream().anyMatch(chosen::contains))
                .toList();
        if (own.size() < least) {
            return Optional.empty();
        }
        SortedMap<String, Position> placed = new TreeMap<>(arranged(new Arrangement(own), gridMm));
        Map<String, Position> before = places.positions();
        for (BoardPlaces.CardPlace card : places.cards()) {
            Footprint print = card.footprint();
            if (all.contains(print) && !own.contains(print) && card.breakout().isPresent()) {
                Position from = before.get(card.breakout().get());
                Position to = placed.get(card.breakout().get());
                if (from != null && to != null) {
                    placed.putAll(new Arrangement(List.of(print)).moved(to.xMm() - from.xMm(), to.yMm() - from.yMm()));
                }
            }
        }
        return Optional.of(placed);
    }

    private SortedMap<String, Position> arranged(Arrangement things, double gridMm) {
        return switch (this) {
            case ALIGN_LEFT -> things.aligned(Arrangement.Side.LEFT);
            case ALIGN_CENTRE -> things.aligned(Arrangement.Side.CENTRE);
            case ALIGN_RIGHT -> things.aligned(Arrangement.Side.RIGHT);
            case ALIGN_TOP -> things.aligned(Arrangement.Side.TOP);
            case ALIGN_MIDDLE -> things.aligned(Arrangement.Side.MIDDLE);
            case ALIGN_BOTTOM -> things.aligned(Arrangement.Side.BOTTOM);
            case SHARE_ACROSS -> things.sharedOut(true);
            case SHARE_DOWN -> things.sharedOut(false);
            case MIRROR_ACROSS -> things.mirrored(true);
            case MIRROR_DOWN -> things.mirrored(false);
            case TURN_CLOCKWISE -> things.turned(true);
            case TURN_ANTICLOCKWISE -> things.turned(false);
            case PUT_ON_GRID -> things.onGrid(gridMm);
        };
    }
}
