package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.edit.board.Footprint;
import org.ohmloom.model.Position;

/**
 * Where things stand on the board that a scene shows: what turns a place of the scene into one of the board and tells what is
 * moved when something is dragged.
 *
 * @param shift  how far the board is moved in the scene, mm
 * @param joints breakouts
 * @param cards  components, connectors, ground points and splices at breakouts
 */
public record BoardPlaces(Point shift, List<Joint> joints, List<CardPlace> cards) {

    /**
     * A breakout: the upright line at which its bundles meet.
     *
     * @param id       the breakout
     * @param at       where it stands
     * @param topMm    upper end of its line, mm
     * @param bottomMm lower end of its line, mm
     */
    public record Joint(String id, Position at, double topMm, double bottomMm) {

        double distanceMm(Position from) {
            return point(from)
                    .distanceMm(
                            new Point(at.xMm(), Math.min(topMm, at.yMm())),
                            new Point(at.xMm(), Math.max(bottomMm, at.yMm())));
        }
    }

    /**
     * A card at a breakout.
     *
     * @param footprint where it stands, and the ids it is placed by
     * @param element   id of what it shows
     * @param breakout  id of the breakout it hangs at
     */
    public record CardPlace(Footprint footprint, String element, Optional<String> breakout) {}

    public BoardPlaces {
        joints = List.copyOf(joints);
        cards = List.copyOf(cards);
    }

    /** The place on the board of a point of the scene. */
    public Position toBoard(Point scene) {
        return new Position(scene.xMm() - shift.xMm(), scene.yMm() - shift.yMm());
    }

    /** The point of the scene of a place on the board. */
    public Point toScene(Position at) {
        return point(at).plus(shift.xMm(), shift.yMm());
    }

    /** The position of everything that has one, by id. */
    public SortedMap<String, Position> positions() {
        SortedMap<String, Position> all = new TreeMap<>();
        cards.forEach(card -> card.footprint()
                .ids()
                .forEach(id -> all.put(id, card.footprint().centre())));
        joints.forEach(joint -> all.put(joint.id(), joint.at()));
        return all;
    }

    /** The same with newer positions where there are some: of edits made since the scene was drawn. */
    public BoardPlaces with(Map<String, Position> newer) {
        List<Joint> movedJoints = joints.stream()
                .map(each -> {
                    Position at = newer.getOrDefault(each.id(), each.at());
                    double down = at.yMm() - each.at().yMm();
                    return new Joint(each.id(), at, each.topMm() + down, each.bottomMm() + down);
                })
                .toList();
        List<CardPlace> movedCards = cards.stream()
                .map(each -> {
                    Footprint print = each.footprint();
                    Position at = print.ids().stream()
                            .filter(newer::containsKey)
                            .map(newer::get)
                            .findFirst()
                            .orElse(print.centre());
                    return new CardPlace(
                            new Footprint(print.ids(), at, print.widthMm(), print.heightMm()),
                            each.element(),
                            each.breakout());
                })
                .toList();
        return new BoardPlaces(shift, movedJoints, movedCards);
    }

    /** The breakout whose line passes a place within a reach, mm; the nearest of several. */
    public Optional<Joint> breakoutAt(Position at, double reachMm) {
        return joints.stream()
                .filter(joint -> joint.distanceMm(at) <= reachMm)
                .min(Comparator.comparingDouble(joint -> joint.distanceMm(at)));
    }

    /** The breakout of that id. */
    public Optional<Joint> joint(String id) {
        return joints.stream().filter(joint -> joint.id().equals(id)).findFirst();
    }

    /** Whether something can be moved: it stands at a place of its own. */
    public boolean has(String id) {
        return joint(id).isPresent()
                || cards.stream().anyMatch(card -> card.footprint().ids().contains(id));
    }

    /**
     * What stands at a place of its own among some things, each with the room it takes; a breakout with the cards that hang
     * there, which go where it goes.
     */
    public List<Footprint> moving(Collection<String> ids) {
        List<Footprint> all = new ArrayList<>();
        for (Joint joint : joints) {
            if (ids.contains(joint.id())) {
                all.add(new Footprint(Set.of(joint.id()), joint.at(), 0, 0));
            }
        }
        for (CardPlace card : cards) {
            boolean along = card.breakout().filter(ids::contains).isPresent();
            if (along || card.footprint().ids().stream().anyMatch(ids::contains)) {
                all.add(card.footprint());
            }
        }
        return all;
    }

    private static Point point(Position at) {
        return new Point(at.xMm(), at.yMm());
    }
}
