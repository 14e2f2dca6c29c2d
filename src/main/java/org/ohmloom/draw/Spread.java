package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Position;

/** Puts measured rows on the board: breakouts, runs and cards get their coordinates. Used once. */
final class Spread {

    private static final double SKYLINE_GAP_MM = 4;
    private static final double LEAST_SPUR_MM = 4;

    private final RunTexts texts;
    private final RunLabels labels;
    private final Map<String, Position> positions;
    private final Point origin;
    private final Map<BreakoutId, Point> ats = new LinkedHashMap<>();
    private final Map<BreakoutId, Integer> hanging = new LinkedHashMap<>();
    private final List<Board.Run> runs = new ArrayList<>();
    private final List<Board.Placed> cards = new ArrayList<>();

    /** For a tree whose trunk begins at a point, as far as the positions do not say otherwise. */
    Spread(RunTexts texts, RunLabels labels, Map<String, Position> positions, Point origin) {
        this.texts = texts;
        this.labels = labels;
        this.positions = positions;
        this.origin = origin;
    }

    /** A trunk with its fans; {@code x} are the places of its breakouts, {@code clearance} the room beside it. */
    Board trunk(List<BreakoutId> trunk, List<Tie> ties, List<Fan> fans, double[] x, double clearance) {
        int last = trunk.size() - 1;
        double[] above = skyline(fans, x, clearance, true);
        double[] below = skyline(fans, x, clearance, false);
        Point moved = origin;
        for (int k = 0; k <= last; k++) {
            Point at = new Point(x[k], 0);
            moved = moved(trunk.get(k), at, moved);
            Point here = at.plus(moved.xMm(), moved.yMm());
            Fan fan = fans.get(k);
            joint(trunk.get(k), here, fan.count() + (k > 0 && k < last ? 1 : 0));
            if (k > 0) {
                Point before = ats.getOrDefault(trunk.get(k - 1), here);
                run(ties.get(k - 1), trunk.get(k), new Point(before.xMm(), here.yMm()), here, k == 1);
            }
            bush(fan.above(), here, -above[k] - fan.above().heightMm(), 1, moved);
            bush(fan.below(), here, below[k], 1, moved);
            bush(fan.end(), here, -fan.end().middleMm(), k == 0 ? -1 : 1, moved);
            bush(fan.other(), here, -fan.other().middleMm(), 1, moved);
        }
        return board();
    }

    /**
     * How far each bush stays off the trunk: farther than all it reaches over, worked out from the right end. The bush
     * at the right end itself stands on both sides of the trunk.
     */
    private static double[] skyline(List<Fan> fans, double[] x, double clearance, boolean up) {
        int last = x.length - 1;
        double[] off = new double[x.length];
        double[] reach = new double[x.length];
        for (int k = last; k >= 0; k--) {
            Bush bush = up ? fans.get(k).above() : fans.get(k).below();
            Bush end = fans.get(k).end();
            double base = clearance;
            for (int j = k + 1; j <= last && x[j] < x[k] + bush.widthMm() + SKYLINE_GAP_MM; j++) {
                base = Math.max(base, reach[j]);
            }
            off[k] = base;
            reach[k] = bush.twigs().isEmpty() ? clearance : base + bush.heightMm() + SKYLINE_GAP_MM;
            if (k == last) {
                double half = up ? end.middleMm() : end.heightMm() - end.middleMm();
                reach[k] = Math.max(clearance, half + SKYLINE_GAP_MM);
            }
        }
        return off;
    }

    private void bush(Bush bush, Point joint, double topMm, int side, Point moved) {
        for (Twig twig : bush.twigs()) {
            double y = joint.yMm() + topMm + twig.lineMm();
            double x = joint.xMm() + side * twig.runMm();
            twig.card().ifPresent(card -> card(card, bush.at(), new Point(x, y), side, joint));
            if (twig.tie().isPresent() && twig.beyond().isPresent()) {
                Bush beyond = twig.beyond().get();
                Point at = new Point(x, y);
                Point shift = moved(beyond.at(), at.plus(-moved.xMm(), -moved.yMm()), moved);
                Point there = at.plus(shift.xMm() - moved.xMm(), shift.yMm() - moved.yMm());
                joint(beyond.at(), there, beyond.twigs().size());
                run(twig.tie().get(), beyond.at(), new Point(joint.xMm(), there.yMm()), there, false);
                bush(beyond, there, -beyond.middleMm(), side, shift);
            }
        }
    }

    /** How far a breakout is moved: to its own position, otherwise with the one before it. */
    private Point moved(BreakoutId id, Point at, Point before) {
        Position own = positions.get(id.value());
        return own == null ? before : new Point(own.xMm() - at.xMm(), own.yMm() - at.yMm());
    }

    private void card(Card card, BreakoutId joint, Point door, int side, Point at) {
        double left = side > 0 ? door.xMm() : door.xMm() - card.widthMm();
        Extent extent = Extent.at(left, door.yMm() - card.heightMm() / 2, card.widthMm(), card.heightMm());
        boolean mirror = side < 0;
        Optional<Position> own = position(card);
        if (own.isPresent()) {
            Point middle = extent.centre();
            extent = extent.moved(own.get().xMm() - middle.xMm(), own.get().yMm() - middle.yMm());
            mirror = own.get().xMm() < at.xMm();
            extent = extent.moved(clear(extent, mirror, at.xMm()), 0);
        }
        cards.add(new Board.Placed(card, extent, mirror, Optional.of(joint)));
    }

    /** How far a card must move aside so that its wires can come to it from the upright line of its breakout. */
    private static double clear(Extent extent, boolean mirror, double lineMm) {
        return mirror
                ? Math.min(0, lineMm - LEAST_SPUR_MM - extent.rightMm())
                : Math.max(0, lineMm + LEAST_SPUR_MM - extent.leftMm());
    }

    /** A card's own position: that of one of its connectors, or of the component for its first card. */
    private Optional<Position> position(Card card) {
        if (positions.isEmpty()) {
            return Optional.empty();
        }
        boolean first =
                cards.stream().noneMatch(placed -> placed.card().element().equals(card.element()));
        return Stream.concat(
                        card.tabs().stream().filter(Tab::connector).map(Tab::element),
                        first ? Stream.of(card.element()) : Stream.of())
                .flatMap(id -> Optional.ofNullable(positions.get(id)).stream())
                .findFirst();
    }

    private Board board() {
        if (!positions.isEmpty()) {
            List<Extent> written = runs.stream()
                    .flatMap(run -> labels.of(run, ats.getOrDefault(run.near(), run.from())).stream())
                    .map(item -> item.mark().bounds())
                    .toList();
            List<Board.Placed> settled = Settling.apart(cards, written);
            cards.clear();
            cards.addAll(settled);
        }
        Map<BreakoutId, double[]> reaches = new HashMap<>();
        ats.forEach((id, at) -> reaches.put(id, new double[] {at.yMm(), at.yMm()}));
        for (Board.Run run : runs) {
            reach(reaches, run.near(), run.from().yMm());
            reach(reaches, run.far(), run.from().yMm());
        }
        for (Board.Placed placed : cards) {
            placed.joint().ifPresent(id -> placed.doors().forEach(door -> reach(reaches, id, door.yMm())));
        }
        List<Board.Joint> joints = new ArrayList<>();
        ats.forEach((id, at) -> {
            double[] reach = reaches.getOrDefault(id, new double[] {at.yMm(), at.yMm()});
            joints.add(new Board.Joint(id, at, reach[0], reach[1], hanging.getOrDefault(id, 0) != 1));
        });
        return new Board(List.copyOf(joints), List.copyOf(runs), List.copyOf(cards));
    }

    /** The line of a breakout reaches as far as something leaves it. */
    private static void reach(Map<BreakoutId, double[]> reaches, BreakoutId id, double y) {
        double[] reach = reaches.get(id);
        if (reach != null) {
            reach[0] = Math.min(reach[0], y);
            reach[1] = Math.max(reach[1], y);
        }
    }

    private void joint(BreakoutId id, Point at, int count) {
        ats.put(id, at);
        hanging.put(id, count);
    }

    private void run(Tie tie, BreakoutId far, Point from, Point to, boolean first) {
        boolean branching = hanging.getOrDefault(far, 0) != 1;
        runs.add(new Board.Run(tie, tie.other(far), far, from, to, texts.of(tie, far, branching, first)));
    }
}
