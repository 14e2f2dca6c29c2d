package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.BreakoutId;

/**
 * Where everything of the physical harness lies on the board.
 *
 * @param joints breakouts
 * @param runs   ties
 * @param cards  cards
 */
record Board(List<Joint> joints, List<Run> runs, List<Placed> cards) {

    /**
     * A breakout: the upright line at which its runs meet.
     *
     * @param id        the breakout
     * @param at        where the run that leads to it ends
     * @param topMm     upper end, mm
     * @param bottomMm  lower end, mm
     * @param branching whether more than one thing hangs there
     */
    record Joint(BreakoutId id, Point at, double topMm, double bottomMm, boolean branching) {}

    /**
     * A tie: the level line from one breakout to the next.
     *
     * @param tie  the tie
     * @param near the breakout it is drawn from
     * @param far  the breakout it leads to
     * @param from point at the near one
     * @param to   point at the far one, level with {@code from}
     * @param text what is written along it
     */
    record Run(Tie tie, BreakoutId near, BreakoutId far, Point from, Point to, RunText text) {

        /** The point at a share of its length from the tie's own {@code from} end. */
        Point along(double fraction) {
            return tie.from().equals(near) ? from.towards(to, fraction) : to.towards(from, fraction);
        }
    }

    /**
     * A card on the board.
     *
     * @param card   the card
     * @param extent where it lies
     * @param mirror whether its wires come from the right
     * @param joint  the breakout it hangs at, if it is placed
     */
    record Placed(Card card, Extent extent, boolean mirror, Optional<BreakoutId> joint) {

        /** Where wires arrive: at every tab, or at the box when it has none. */
        List<Point> doors() {
            return card.tabs().isEmpty()
                    ? List.of(door(card.element()))
                    : card.tabs().stream().map(tab -> door(tab.element())).toList();
        }

        /** Where the wires of a tab, or of the box itself, arrive. */
        Point door(String element) {
            double y = extent.topMm() + card.tabMiddleMm(element);
            return new Point(mirror ? extent.rightMm() : extent.leftMm(), y);
        }
    }

    /** Everything on the board together with another board. */
    Board with(Board other) {
        return new Board(joined(joints, other.joints), joined(runs, other.runs), joined(cards, other.cards));
    }

    /** The smallest rectangle around it, labels not counted. */
    Optional<Extent> bounds() {
        List<Extent> all = new ArrayList<>();
        joints.forEach(joint ->
                all.add(new Extent(joint.at().xMm(), joint.topMm(), joint.at().xMm(), joint.bottomMm())));
        runs.forEach(run -> all.add(Extent.around(List.of(run.from(), run.to())).grown(5)));
        cards.forEach(placed -> all.add(placed.extent()));
        return Extent.union(all);
    }

    Optional<Joint> joint(BreakoutId id) {
        return joints.stream().filter(joint -> joint.id().equals(id)).findFirst();
    }

    private static <T> List<T> joined(List<T> one, List<T> other) {
        List<T> all = new ArrayList<>(one);
        all.addAll(other);
        return List.copyOf(all);
    }
}
