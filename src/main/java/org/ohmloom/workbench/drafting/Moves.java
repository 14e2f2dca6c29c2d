package org.ohmloom.workbench.drafting;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.edit.MoveOnBoard;
import org.ohmloom.edit.board.Arrangement;
import org.ohmloom.edit.board.Footprint;
import org.ohmloom.model.Position;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.words.Words;

/**
 * Things that are moved together: those that were taken hold of and stand at a place of their own, breakouts with the cards that
 * hang there.
 *
 * @param lead   what the move is named after and drawn to the grid by
 * @param things what moves
 */
record Moves(String lead, List<Footprint> things) {

    Moves {
        things = List.copyOf(things);
    }

    /** The moves of some things, the leading one first; empty when none of them has a place. */
    static Optional<Moves> of(BoardPlaces places, List<String> ids) {
        List<Footprint> things = places.moving(Set.copyOf(ids));
        Set<String> placed = places.positions().keySet();
        return ids.stream().filter(placed::contains).findFirst().map(lead -> new Moves(lead, things));
    }

    /** Where the leading one stands. */
    Position at() {
        return things.stream()
                .filter(each -> each.ids().contains(lead))
                .findFirst()
                .map(Footprint::centre)
                .orElseThrow();
    }

    /** Ids of everything that moves. */
    Set<String> ids() {
        return things.stream().flatMap(each -> each.ids().stream()).collect(Collectors.toCollection(HashSet::new));
    }

    /** Where the others stand that it can be drawn level with. */
    List<Position> others(BoardPlaces places) {
        Set<String> own = ids();
        return places.positions().entrySet().stream()
                .filter(each -> !own.contains(each.getKey()))
                .map(Map.Entry::getValue)
                .distinct()
                .toList();
    }

    /** The new places. */
    SortedMap<String, Position> by(double dxMm, double dyMm) {
        return new Arrangement(things).moved(dxMm, dyMm);
    }

    /** The edit of a drag. */
    MoveOnBoard drag(Words words, double dxMm, double dyMm) {
        return new MoveOnBoard(words.text("move", what(words)), by(dxMm, dyMm));
    }

    /** The edit of an arrow key; several presses in a row are one step. */
    MoveOnBoard nudge(Words words, double dxMm, double dyMm) {
        Text label = words.text("nudge", what(words));
        return new MoveOnBoard(label, by(dxMm, dyMm), Optional.of(label + " " + ids().hashCode()));
    }

    private String what(Words words) {
        return things.size() == 1 ? lead : words.get("things", String.valueOf(things.size()));
    }
}
