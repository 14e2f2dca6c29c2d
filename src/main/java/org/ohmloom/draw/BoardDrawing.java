package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Zone;
import org.ohmloom.model.ZoneId;

/** Draws the board: zones, bundles, breakouts, cards and what is written along them. */
final class BoardDrawing {

    private static final double CASING_MM = 0.35;
    private static final double ABOVE_ON_SHEET_MM = 1.2;
    private static final double WARM_CELSIUS = 60;
    private static final double HOT_CELSIUS = 90;

    private final Harness harness;
    private final Board board;
    private final Doors doors;
    private final RunTexts texts;
    private final Thickness thickness;
    private final Lettering lettering;
    private final CardMaker maker;
    private final RunLabels labels;
    private final Optional<Strands> strands;
    private final Function<String, Ink> inkOf;
    private final Map<BreakoutId, Board.Joint> joints = new HashMap<>();
    private final Set<BreakoutId> named = new HashSet<>();
    private final List<Item> items = new ArrayList<>();

    BoardDrawing(
            Harness harness,
            Board board,
            Doors doors,
            RunTexts texts,
            Thickness thickness,
            Lettering lettering,
            CardMaker maker,
            RunLabels labels,
            Optional<Strands> strands,
            Function<String, Ink> inkOf) {
        this.harness = harness;
        this.board = board;
        this.doors = doors;
        this.texts = texts;
        this.thickness = thickness;
        this.lettering = lettering;
        this.maker = maker;
        this.labels = labels;
        this.strands = strands;
        this.inkOf = inkOf;
        board.joints().forEach(each -> joints.put(each.id(), each));
        for (Board.Run run : board.runs()) {
            named.add(run.far());
            if (!texts.onSheet() || !run.text().near().isEmpty()) {
                named.add(run.near());
            }
        }
    }

    private Optional<Board.Joint> joint(BreakoutId id) {
        return Optional.ofNullable(joints.get(id));
    }

    List<Item> items() {
        CardDrawing cards = new CardDrawing(lettering);
        board.runs().forEach(this::zone);
        board.cards()
                .forEach(placed -> zone(placed.card().zone(), placed.extent().grown(1.4)));
        bodies(Ink.BUNDLE, 0);
        if (strands.isPresent()) {
            bodies(Ink.BUNDLE_INSIDE, 2 * CASING_MM);
        }
        for (Board.Placed placed : board.cards()) {
            items.addAll(cards.items(placed.card(), placed.extent(), placed.mirror()));
        }
        for (Board.Run run : board.runs()) {
            for (Connector connector : run.tie().pair()) {
                items.addAll(cards.tab(maker.tab(connector), doors.tab(run, connector)));
            }
            splices(run);
            items.addAll(labels.of(run, joint(run.near()).map(Board.Joint::at).orElse(run.from())));
        }
        board.joints().forEach(this::joint);
        return items;
    }

    private void zone(Board.Run run) {
        double half = thickness.bodyMm(run.tie().id()) / 2 + 3.8;
        Extent extent = Extent.around(List.of(run.from(), run.to()));
        run.tie()
                .segment()
                .ifPresent(segment -> zone(
                        segment.zone(),
                        new Extent(
                                extent.leftMm(),
                                extent.topMm()
                                        - half
                                        - run.text().aboveMm()
                                        - (texts.onSheet() ? ABOVE_ON_SHEET_MM : 0),
                                extent.rightMm(),
                                extent.bottomMm() + half + run.text().belowMm())));
    }

    private void zone(Optional<ZoneId> id, Extent extent) {
        if (id.isPresent()) {
            Zone zone = harness.zones().get(id.get());
            items.add(Item.of(
                    Layer.ZONES,
                    new Box(extent, 1.5, Fill.of(tint(zone))),
                    zone.id().value(),
                    Legend.describe(zone)));
        }
    }

    /** The tint of a zone by its ambient temperature. */
    static Ink tint(Zone zone) {
        return zone.ambientCelsius() >= HOT_CELSIUS
                ? Ink.ZONE_HOT
                : zone.ambientCelsius() >= WARM_CELSIUS ? Ink.ZONE_WARM : Ink.ZONE_COOL;
    }

    /** Bars, runs and the short lines to the cards, all narrower by as much. */
    private void bodies(Ink ink, double narrowerMm) {
        strands.ifPresent(each -> items.addAll(each.bars(ink, narrowerMm)));
        for (Board.Joint joint : strands.isPresent() ? List.<Board.Joint>of() : board.joints()) {
            String id = joint.id().value();
            Point top = new Point(joint.at().xMm(), joint.topMm());
            Point bottom = new Point(joint.at().xMm(), joint.bottomMm() + 0.001);
            String name =
                    lettering.say("breakout", Spot.name(harness.breakouts().get(joint.id())));
            body(Line.of(thickness.bodyMm(id) - narrowerMm, ink, top, bottom), id, name);
        }
        for (Board.Run run : board.runs()) {
            if (run.tie().pair().isEmpty()) {
                String id = run.tie().id();
                bare(id, run.near(), run.from().yMm(), ink, narrowerMm);
                bare(id, run.far(), run.to().yMm(), ink, narrowerMm);
                body(Line.of(thickness.bodyMm(id) - narrowerMm, ink, run.from(), run.to()), id, labels.describe(run));
            } else {
                run.tie().pair().forEach(connector -> half(run, connector, ink, narrowerMm));
            }
        }
        for (Board.Placed placed : board.cards()) {
            List<Tab> tabs = placed.card().tabs();
            Optional<Board.Joint> joint = placed.joint().flatMap(this::joint);
            if (joint.isPresent() && tabs.isEmpty()) {
                spur(placed, joint.get(), placed.card().element(), placed.card().description(), ink, narrowerMm);
            } else if (joint.isPresent()) {
                tabs.forEach(tab -> spur(placed, joint.get(), tab.element(), tab.description(), ink, narrowerMm));
            }
        }
    }

    private void spur(Board.Placed placed, Board.Joint joint, String element, String text, Ink ink, double narrowerMm) {
        Point door = placed.door(element);
        Point at = new Point(joint.at().xMm(), door.yMm());
        bare(element, joint.id(), door.yMm(), ink, narrowerMm);
        body(Line.of(thickness.bodyMm(element) - narrowerMm, ink, at, door), element, text);
    }

    /** Where single wires are shown, their bars join what meets at a breakout; what has no wire yet is joined to it by a plain one. */
    private void bare(String body, BreakoutId at, double yMm, Ink ink, double narrowerMm) {
        if (strands.isPresent() && thickness.count(body) == 0) {
            joint(at).filter(joint -> joint.at().yMm() != yMm).ifPresent(joint -> {
                Point from = joint.at();
                Point to = new Point(from.xMm(), yMm);
                String name =
                        lettering.say("breakout", Spot.name(harness.breakouts().get(at)));
                body(Line.of(thickness.bodyMm(0) - narrowerMm, ink, from, to), at.value(), name);
            });
        }
    }

    private void half(Board.Run run, Connector connector, Ink ink, double narrowerMm) {
        String id = connector.id().value();
        Point door = doors.of(id).orElse(run.from());
        Point joint = run.tie().pair().indexOf(connector) == 0 ? run.along(0) : run.along(1);
        body(
                Line.of(thickness.bodyMm(id) - narrowerMm, ink, joint, door),
                id,
                maker.tab(connector).description());
    }

    /** Level bundles that show their wires have straight ends, so that they open into what they meet. */
    private void body(Line line, String element, String text) {
        Extent around = Extent.around(line.points());
        boolean open = strands.isPresent() && around.heightMm() < line.widthMm();
        double half = line.widthMm() / 2;
        Ink ink = line.ink() == Ink.BUNDLE ? inkOf.apply(element) : line.ink();
        Mark mark = open
                ? new Box(
                        new Extent(around.leftMm(), around.topMm() - half, around.rightMm(), around.bottomMm() + half),
                        0,
                        Fill.of(ink))
                : new Line(line.points(), line.widthMm(), ink, line.pattern());
        items.add(Item.of(Layer.BUNDLES, mark, element, text));
    }

    private void splices(Board.Run run) {
        List<Splice> splices = texts.splices(run.tie());
        for (int k = 0; k < splices.size(); k++) {
            Splice splice = splices.get(k);
            Point at = doors.splice(run, k, splices.size());
            String id = splice.id().value();
            String text = lettering.say("splice.told", id, splice.name());
            double half = thickness.bodyMm(run.tie().id()) / 2;
            double off = texts.onSheet()
                    ? RunLabels.dimensionMm(half) + 0.8 + run.text().aboveMm()
                    : Math.max(half, 1.6) + 0.9;
            String words = texts.splice(run.tie(), splice);
            CardDrawing.splice(at).forEach(mark -> items.add(Item.of(Layer.CONNECTORS, mark, id, text)));
            items.add(Item.of(
                    Layer.CONNECTORS,
                    lettering.text(words, at.plus(0, -off), RunTexts.SMALL_MM, Anchor.MIDDLE, Weight.BOLD, Ink.TEXT),
                    id,
                    text));
        }
    }

    /** A breakout that nothing hangs at is named beside it; one without runs is named above. */
    private void joint(Board.Joint joint) {
        String id = joint.id().value();
        String name = texts.joint(joint.id(), true);
        if (!named.contains(joint.id())) {
            double top = board.cards().stream()
                    .filter(placed -> placed.joint().filter(joint.id()::equals).isPresent())
                    .mapToDouble(placed -> placed.extent().topMm())
                    .min()
                    .orElse(joint.topMm() - 2);
            double written = board.runs().stream()
                    .filter(run -> run.near().equals(joint.id()))
                    .mapToDouble(run -> run.from().yMm()
                            - RunLabels.aboveMm(thickness.bodyMm(run.tie().id()) / 2, run.text()))
                    .min()
                    .orElse(top);
            Point at = new Point(joint.at().xMm(), Math.min(Math.min(top, written), joint.topMm()) - 1.2);
            items.add(labels.breakout(name, at, Anchor.MIDDLE, id));
        }
        double radius = Math.max(1.1, thickness.bodyMm(id) / 2 + 0.35);
        boolean bare = !texts.onSheet() && thickness.count(id) == 0;
        if (strands.isEmpty() || bare) {
            items.add(Item.of(
                    Layer.BUNDLES,
                    new Disc(joint.at(), radius, Fill.of(Ink.PLATE, Ink.BUNDLE, 0.4)),
                    id,
                    lettering.say("breakout", Spot.name(harness.breakouts().get(joint.id())))));
        }
    }
}
