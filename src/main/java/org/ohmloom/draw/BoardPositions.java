package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ohmloom.edit.board.Footprint;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Position;

/** The positions of a board in the terms of the harness: breakouts, and cards by all ids that share one. */
final class BoardPositions {

    private BoardPositions() {}

    /**
     * Where everything stands, for people who draw on the board.
     *
     * @param shift how far the board is moved in the scene that shows it
     */
    static BoardPlaces places(Board board, Point shift) {
        List<BoardPlaces.Joint> joints = board.joints().stream()
                .map(each -> new BoardPlaces.Joint(
                        each.id().value(), position(each.at()), rounded(each.topMm()), rounded(each.bottomMm())))
                .toList();
        List<BoardPlaces.CardPlace> cards = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Board.Placed placed : board.cards()) {
            List<String> ids = ids(placed.card(), seen.add(placed.card().element()));
            if (!ids.isEmpty()) {
                Extent extent = placed.extent();
                cards.add(new BoardPlaces.CardPlace(
                        new Footprint(Set.copyOf(ids), position(extent.centre()), extent.widthMm(), extent.heightMm()),
                        placed.card().element(),
                        placed.joint().map(BreakoutId::value)));
            }
        }
        return new BoardPlaces(shift, joints, cards);
    }

    /**
     * Ids by which a card is placed: its connectors, and its component when this is the component's first card.
     *
     * @param first whether it is the first card of what it shows
     */
    private static List<String> ids(Card card, boolean first) {
        List<String> ids = new ArrayList<>();
        if (card.kind() == Card.Kind.CONTINUATION) {
            return ids;
        }
        card.tabs().stream().filter(Tab::connector).map(Tab::element).forEach(ids::add);
        if (first) {
            ids.add(card.element());
        }
        return ids;
    }

    private static Position position(Point point) {
        return new Position(rounded(point.xMm()), rounded(point.yMm()));
    }

    private static double rounded(double lengthMm) {
        return Math.round(lengthMm * 10) / 10.0;
    }
}
