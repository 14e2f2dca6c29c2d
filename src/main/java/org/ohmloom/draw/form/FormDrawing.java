package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Lettering;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Splice;
import org.ohmloom.review.Evidence;
import org.ohmloom.units.Formats;

/** Draws a laid board at 1:1: bundles, cards, and everything that is to be found or fixed along the bundles, with what it is. */
final class FormDrawing {

    private static final double NAME_MM = 4;
    private static final double WORDS_MM = 2.5;
    private static final double SMALL_MM = 2;
    private static final double DESCENT = 0.31;
    private static final double EVERY_MM = 900;
    private static final double[] SHIFTS_MM = {
        0, 25, -25, 50, -50, 80, -80, 120, -120, 170, -170, 230, -230, 300, -300, 400, -400, 520, -520
    };
    private static final double[] OUT_MM = {1.6, 5, 10, 16, 24};

    private final FormPlan plan;
    private final Harness harness;
    private final Evidence evidence;
    private final Lettering lettering;
    private final AlongRuns along;
    private final TextRoom room;
    private final List<Item> items = new ArrayList<>();

    private FormDrawing(FormPlan plan, Evidence evidence, Lettering lettering, TextRoom room) {
        this.plan = plan;
        this.harness = evidence.harness();
        this.evidence = evidence;
        this.lettering = lettering;
        this.along = new AlongRuns(harness, evidence);
        this.room = room;
    }

    /** The items of a board; texts are set where the room allows. */
    static List<Item> items(FormPlan plan, Evidence evidence, Lettering lettering, TextRoom room) {
        FormDrawing drawing = new FormDrawing(plan, evidence, lettering, room);
        drawing.draw();
        return drawing.items;
    }

    private void draw() {
        for (int k = 0; k < plan.laid().size(); k++) {
            Laid laid = plan.laid().get(k);
            items.addAll(BundlePen.items(laid));
            for (int run = 0; run < laid.ways().size(); run++) {
                room.hinder(laid.ways().get(run).points(), laid.tree().runs().get(run).widthMm() + 1);
            }
            cards(plan.pieces().get(k), laid);
        }
        for (Laid laid : plan.laid()) {
            breakouts(laid);
        }
        for (Laid laid : plan.laid()) {
            for (int k = 0; k < laid.ways().size(); k++) {
                FormRun run = laid.tree().runs().get(k);
                if (!run.leader()) {
                    run(run, laid.ways().get(k));
                }
            }
        }
    }

    private void cards(FormPiece piece, Laid laid) {
        for (int k = 0; k < laid.cards().size(); k++) {
            if (laid.cards().get(k).isPresent() && piece.cards().get(k).isPresent()) {
                Extent extent = laid.cards().get(k).get();
                room.take(extent.grown(0.5));
                items.add(Item.of(
                        Layer.CONNECTORS, new Box(extent, 1.5, Fill.of(Ink.PLATE, Ink.COMPONENT_EDGE, 0.35))));
                Placement place = Placement.moved(extent.leftMm(), extent.topMm());
                piece.cards().get(k).get().items().forEach(item -> items.add(item.placed(place)));
            }
        }
    }

    private void breakouts(Laid laid) {
        List<List<Integer>> at = laid.tree().runsAt();
        for (int k = 0; k < laid.nodes().size(); k++) {
            FormNode node = laid.tree().nodes().get(k);
            boolean leadered = at.get(k).size() == 1
                    && laid.tree().runs().get(at.get(k).get(0)).leader();
            Optional<Breakout> breakout = harness.breakouts().find(new BreakoutId(node.id()));
            if (breakout.isPresent() && !leadered) {
                String name = breakout.get().name();
                String words = name.equals(node.id()) ? node.id() : node.id() + " " + name;
                write(node.id(), around(words, laid.nodes().get(k), NAME_MM, Weight.BOLD, Ink.TEXT));
            }
        }
    }

    private void run(FormRun run, Way way) {
        BundleSegment segment = harness.segments().get(new SegmentId(run.id()));
        Optional<SegmentSection> section = evidence.bundles().of(segment.id());
        fixings(run, way, segment, section);
        int times = (int) Math.max(1, Math.round(run.lengthMm() / EVERY_MM));
        String name = run.id() + "  " + Formats.millimetres(run.lengthMm());
        for (int k = 0; k < times; k++) {
            double at = run.lengthMm() * (k + 0.5) / times;
            write(run.id(), beside(run, way, at, name, NAME_MM, Weight.BOLD, Ink.TEXT, true));
        }
        double middle = run.lengthMm() * 0.5 / times;
        for (String line : details(run, way, segment, section)) {
            write(run.id(), beside(run, way, middle, line, WORDS_MM, Weight.REGULAR, Ink.SOFT_TEXT, false));
        }
    }

    private List<String> details(
            FormRun run, Way way, BundleSegment segment, Optional<SegmentSection> section) {
        List<String> lines = new ArrayList<>();
        int wires = section.map(SegmentSection::wireCount).orElse(0);
        lines.add((wires == 1 ? "1 wire" : wires + " wires") + ", " + Formats.millimetres(run.widthMm()) + " thick"
                + (way.folds() > 0 ? ", folded" : ""));
        segment.covering()
                .ifPresent(covering -> lines.add(covering.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ')
                        + " " + covering.text() + ", " + segment.from() + " to " + segment.to()
                        + covering.endFinish()
                                .map(end -> ", ends " + end.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                                .orElse("")));
        return lines;
    }

    /** Ends of the covering, supports, ties, markings and splices. */
    private void fixings(FormRun run, Way way, BundleSegment segment, Optional<SegmentSection> section) {
        double half = run.widthMm() / 2;
        if (segment.covering().isPresent()) {
            double inset = Math.min(8, run.lengthMm() / 6);
            for (double at : new double[] {inset, run.lengthMm() - inset}) {
                mark(run.id(), "end of the covering", BundlePen.acrossLine(way, at, half + 3.5, 1, Ink.BUNDLE));
            }
        }
        if (section.isPresent()) {
            for (double metres : section.get().supports().supportMetres()) {
                support(run, way, metres * 1000);
            }
            for (double metres : section.get().supports().tieMetres()) {
                for (double shift : new double[] {-0.8, 0.8}) {
                    mark(
                            run.id(),
                            "tie",
                            BundlePen.acrossLine(way, metres * 1000 + shift, half + 1.5, 0.5, Ink.TEXT));
                }
            }
        }
        along.markings(segment.id()).forEach((at, count) -> marking(run, way, at, count));
        for (Splice splice : along.splices(segment.id())) {
            splice(run, way, segment, splice);
        }
    }

    /** A clip on both sides of the bundle. */
    private void support(FormRun run, Way way, double atMm) {
        Point at = Way.along(way.points(), atMm);
        double degrees = BundlePen.degreesAt(way, atMm);
        for (double side : new double[] {90, -90}) {
            Point base = Headings.from(at, degrees + side, run.widthMm() / 2 + 0.6);
            List<Point> corners = List.of(
                    Headings.from(base, degrees, -2.5),
                    Headings.from(base, degrees, 2.5),
                    Headings.from(Headings.from(base, degrees, 2.5), degrees + side, 2.6),
                    Headings.from(Headings.from(base, degrees, -2.5), degrees + side, 2.6));
            mark(run.id(), "support", new Area(corners, Fill.of(Ink.GROUND, Ink.TEXT, 0.35)));
        }
    }

    private void marking(FormRun run, Way way, double atMm, int count) {
        double at = Math.max(0, Math.min(run.lengthMm(), atMm));
        Point point = Way.along(way.points(), at);
        double degrees = BundlePen.degreesAt(way, at) + 90;
        Point tip = Headings.from(point, degrees, run.widthMm() / 2 + 0.5);
        Point far = Headings.from(tip, degrees, 3);
        List<Point> flag =
                List.of(tip, Headings.from(far, degrees - 90, 1.6), Headings.from(far, degrees + 90, 1.6));
        mark(run.id(), "markings of wires", new Area(flag, Fill.of(Ink.TABLE_HEAD, Ink.TEXT, 0.25)));
        write(run.id(), beside(run, way, at, "mark " + count, SMALL_MM, Weight.REGULAR, Ink.SOFT_TEXT, false));
    }

    private void splice(FormRun run, Way way, BundleSegment segment, Splice splice) {
        double at = Math.min(run.lengthMm(), AlongRuns.atMm(splice));
        Point point = Way.along(way.points(), at);
        double degrees = BundlePen.degreesAt(way, at);
        double reach = Math.max(5, run.widthMm() / 2 + 2);
        List<Point> corners = new ArrayList<>();
        for (int k = 0; k < 4; k++) {
            corners.add(Headings.from(point, degrees + 90 * k, reach));
        }
        items.add(Item.of(
                Layer.CONNECTORS,
                new Area(corners, Fill.of(Ink.SPLICE, Ink.GROUND, 0.35)),
                splice.id().value(),
                splice.id() + ", splice"));
        String words = splice.id() + " splice, " + Math.round(at) + " mm from " + segment.from();
        write(splice.id().value(), beside(run, way, at, words, 3, Weight.BOLD, Ink.TEXT, true));
    }

    private void mark(String element, String description, Mark mark) {
        items.add(Item.of(Layer.CONNECTORS, mark, element, element + ", " + description));
    }

    private void write(String element, List<Text> candidates) {
        room.place(candidates)
                .ifPresent(text -> items.add(Item.of(Layer.NUMBERS, text, element, text.text())));
    }

    /** Places along a run and beside it, the nearest to a distance from its beginning first; then around that point. */
    private List<Text> beside(
            FormRun run, Way way, double atMm, String words, double high, Weight weight, Ink ink, boolean above) {
        List<Text> found = new ArrayList<>();
        double wide = lettering.widthMm(words, weight, high);
        for (double out : OUT_MM) {
            for (double shift : SHIFTS_MM) {
                double at = atMm + shift;
                if (at < wide / 2 + 2 || at > run.lengthMm() - wide / 2 - 2) {
                    continue;
                }
                Point from = Way.along(way.points(), at - wide / 2);
                Point to = Way.along(way.points(), at + wide / 2);
                if (from.distanceMm(to) < wide - 0.5) {
                    continue;
                }
                double degrees = Headings.to(from, to);
                if (degrees > 90.001 && degrees <= 270.001) {
                    degrees -= 180;
                }
                Point middle = Way.along(way.points(), at);
                double off = run.widthMm() / 2 + out;
                Point over = Headings.from(middle, degrees - 90, off + high * DESCENT);
                Point under = Headings.from(middle, degrees + 90, off + high);
                found.add(turned(words, above ? over : under, wide, high, degrees, weight, ink));
                found.add(turned(words, above ? under : over, wide, high, degrees, weight, ink));
            }
        }
        found.addAll(around(words, Way.along(way.points(), atMm), high, weight, ink));
        return found;
    }

    private static Text turned(
            String words, Point at, double wide, double high, double degrees, Weight weight, Ink ink) {
        double shown = degrees > 180 ? degrees - 360 : degrees;
        return new Text(words, at, high, wide, Anchor.MIDDLE, shown, weight, ink);
    }

    /** Places around a point, level, the nearest first. */
    private List<Text> around(String words, Point at, double high, Weight weight, Ink ink) {
        double wide = lettering.widthMm(words, weight, high);
        List<Text> found = new ArrayList<>();
        for (double reach = 6; reach < 400; reach *= 1.25) {
            for (int k = 0; k < 16; k++) {
                double degrees = 292.5 + k * 22.5;
                double c = Headings.cos(degrees);
                double s = Headings.sin(degrees);
                Point middle = at.plus(c * (reach + wide / 2), s * (reach + high / 2));
                found.add(lettering.text(words, middle.plus(0, high / 2), high, Anchor.MIDDLE, weight, ink));
            }
        }
        return found;
    }
}
