package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.edit.board.Footprint;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Position;

/** The positions of a board in the terms of the harness: breakouts, and cards by all ids that share one. */
final class BoardPositions {

    private BoardPositions() {}

    static SortedMap<String, Position> of(Board board) {
        SortedMap<String, Position> positions = new TreeMap<>();
        for (Board.Placed placed : board.cards()) {
            ids(board, placed)
                    .forEach(id -> positions.put(id, position(placed.extent().centre())));
        }
        board.joints().forEach(joint -> positions.put(joint.id().value(), position(joint.at())));
        return positions;
    }

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
        for (Board.Placed placed : board.cards()) {
            List<String> ids = ids(board, placed);
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

    static SortedMap<String, Position> moved(Board board, Set<String> ids, double dxMm, double dyMm) {
        SortedMap<String, Position> positions = new TreeMap<>();
        for (Board.Joint joint : board.joints()) {
            if (ids.contains(joint.id().value())) {
                positions.put(joint.id().value(), position(joint.at().plus(dxMm, dyMm)));
            }
        }
        for (Board.Placed placed : board.cards()) {
            List<String> sharing = ids(board, placed);
            if (sharing.stream().anyMatch(ids::contains)) {
                Position position = position(placed.extent().centre().plus(dxMm, dyMm));
                sharing.forEach(id -> positions.put(id, position));
            }
        }
        return positions;
    }

    /** Ids by which a card is placed: its connectors, and its component when this is the component's first card. */
    private static List<String> ids(Board board, Board.Placed placed) {
        List<String> ids = new ArrayList<>();
        if (placed.card().kind() == Card.Kind.CONTINUATION) {
            return ids;
        }
        placed.card().tabs().stream().filter(Tab::connector).map(Tab::element).forEach(ids::add);
        boolean first = board.cards().stream()
                .filter(each -> each.card().element().equals(placed.card().element()))
                .findFirst()
                .filter(placed::equals)
                .isPresent();
        if (first) {
            ids.add(placed.card().element());
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
