package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.CoveringWords;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Lettering;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.SheetPen;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Covering;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Splice;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Evidence;
import org.ohmloom.units.Formats;

/** Draws a laid board at 1:1: bundles, cards, and everything that is to be found or fixed along the bundles, with what it is. */
final class FormDrawing {

    private static final double NAME_MM = 4;
    private static final double WORDS_MM = 2.5;
    private static final double SMALL_MM = 2;
    private static final double SPLICE_MM = 3;
    private static final int MOST_NAMED = 8;
    private static final double DESCENT = 0.31;
    private static final double COVERING_INSET_MM = 8;
    private static final double EVERY_MM = 900;
    private static final List<Double> SHIFTS_MM = List.of(
            0.0, 25.0, -25.0, 50.0, -50.0, 80.0, -80.0, 120.0, -120.0, 170.0, -170.0, 230.0, -230.0, 300.0, -300.0,
            400.0, -400.0, 520.0, -520.0);
    private static final List<Double> OUT_MM = List.of(1.6, 5.0, 10.0, 16.0, 24.0);

    private final FormPlan plan;
    private final Harness harness;
    private final Evidence evidence;
    private final Lettering lettering;
    private final AlongRuns along;
    private final SortedMap<SegmentId, SortedSet<WireId>> wiresBySegment;
    private final TextRoom room;
    private final List<Item> items = new ArrayList<>();
    private FormTree current = new FormTree(List.of(), List.of());

    private FormDrawing(FormPlan plan, Evidence evidence, Lettering lettering, TextRoom room) {
        this.plan = plan;
        this.harness = evidence.harness();
        this.evidence = evidence;
        this.lettering = lettering;
        this.along = new AlongRuns(harness, evidence);
        this.room = room;
        this.wiresBySegment = evidence.routes().wiresBySegment();
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
            List<Item> bundles = BundlePen.items(laid);
            items.addAll(bundles);
            bundles.stream()
                    .filter(item -> item.element().isEmpty() && item.layer() == Layer.WIRES)
                    .forEach(peg -> room.take(peg.mark().bounds()));
            for (int run = 0; run < laid.ways().size(); run++) {
                room.hinder(
                        laid.ways().get(run).points(),
                        laid.tree().runs().get(run).widthMm() + 1);
            }
            cards(plan.pieces().get(k), laid);
        }
        forRuns(this::fixings);
        plan.laid().forEach(this::breakouts);
        forRuns(this::names);
        forRuns(this::details);
        forRuns(this::markings);
    }

    private void forRuns(BiConsumer<FormRun, Way> each) {
        for (Laid laid : plan.laid()) {
            current = laid.tree();
            for (int k = 0; k < laid.ways().size(); k++) {
                if (!laid.tree().runs().get(k).leader()) {
                    each.accept(laid.tree().runs().get(k), laid.ways().get(k));
                }
            }
        }
    }

    private void cards(FormPiece piece, Laid laid) {
        for (int k = 0; k < laid.cards().size(); k++) {
            if (laid.cards().get(k).isPresent() && piece.cards().get(k).isPresent()) {
                Extent extent = laid.cards().get(k).get();
                laid.pointer(k)
                        .ifPresent(line -> items.add(Item.of(
                                Layer.CONNECTORS,
                                new Line(line, SheetPen.THIN_MM, Ink.COMPONENT_EDGE, LinePattern.DASHED))));
                room.take(extent.grown(0.5));
                items.add(
                        Item.of(Layer.CONNECTORS, new Box(extent, 1.5, Fill.of(Ink.PLATE, Ink.COMPONENT_EDGE, 0.35))));
                Placement place = Placement.moved(extent.leftMm(), extent.topMm());
                piece.cards().get(k).get().items().forEach(item -> items.add(item.placed(place)));
            }
        }
    }

    private void breakouts(Laid laid) {
        List<List<Integer>> runs = laid.tree().runsAt();
        for (int k = 0; k < laid.nodes().size(); k++) {
            FormNode node = laid.tree().nodes().get(k);
            boolean leadered = runs.get(k).size() == 1
                    && laid.tree().runs().get(runs.get(k).get(0)).leader();
            Optional<Breakout> breakout = harness.breakouts().find(new BreakoutId(node.id()));
            if (breakout.isPresent() && !leadered) {
                String name = breakout.get().name();
                String words = name.equals(node.id()) ? node.id() : node.id() + " " + name;
                Point at = laid.nodes().get(k);
                write(node.id(), around(words, at, NAME_MM, Weight.BOLD, Ink.TEXT), Optional.of(at));
            }
        }
    }

    /** Id and length, on a long run several times. */
    private void names(FormRun run, Way way) {
        int times = times(run);
        String name = run.id() + "  " + Formats.millimetres(run.lengthMm());
        for (int k = 0; k < times; k++) {
            double at = run.lengthMm() * (k + 0.5) / times;
            write(run.id(), beside(run, way, at, name, NAME_MM, Weight.BOLD, Ink.TEXT, true), Optional.empty());
        }
        BundleSegment segment = segment(run);
        for (Splice splice : along.splices(segment.id())) {
            double at = Math.min(run.lengthMm(), AlongRuns.atMm(splice));
            String words = splice.id() + " splice, " + Math.round(at) + " mm from " + segment.from();
            Point mark = Way.along(way.points(), at);
            write(
                    splice.id().value(),
                    beside(run, way, at, words, SPLICE_MM, Weight.BOLD, Ink.TEXT, true),
                    Optional.of(mark));
        }
    }

    private static int times(FormRun run) {
        return (int) Math.max(1, Math.round(run.lengthMm() / EVERY_MM));
    }

    private BundleSegment segment(FormRun run) {
        return harness.segments().get(new SegmentId(run.id()));
    }

    /** What lies in a run and over it. */
    private void details(FormRun run, Way way) {
        BundleSegment segment = segment(run);
        List<String> lines = new ArrayList<>();
        List<String> wires = wiresBySegment.getOrDefault(segment.id(), new TreeSet<>()).stream()
                .map(WireId::value)
                .toList();
        lines.add((wires.size() == 1 ? "1 wire" : wires.size() + " wires")
                + (wires.isEmpty() || wires.size() > MOST_NAMED ? "" : " " + String.join(", ", wires)) + "; "
                + Formats.millimetres(run.widthMm()) + " thick" + (way.folds() > 0 ? "; folded" : ""));
        segment.covering().ifPresent(covering -> lines.add(words(covering, segment)));
        double middle = run.lengthMm() * 0.5 / times(run);
        for (String line : lines) {
            write(
                    run.id(),
                    beside(run, way, middle, line, WORDS_MM, Weight.REGULAR, Ink.SOFT_TEXT, false),
                    Optional.empty());
        }
    }

    private static String words(Covering covering, BundleSegment segment) {
        return CoveringWords.sized(covering) + ", " + segment.from() + " to " + segment.to()
                + covering.endFinish().map(end -> ", ends " + word(end.name())).orElse("");
    }

    private static String word(String constant) {
        return constant.toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Ends of the covering, supports, ties, markings and splices. */
    private void fixings(FormRun run, Way way) {
        BundleSegment segment = segment(run);
        Optional<SegmentSection> section = evidence.bundles().of(segment.id());
        if (segment.covering().isPresent()) {
            double from = inset(run, run.from());
            double to = run.lengthMm() - inset(run, run.to());
            mark(run.id(), "end of the covering", FixingMarks.coveringEnd(run, way, from));
            mark(run.id(), "end of the covering", FixingMarks.coveringEnd(run, way, to));
        }
        if (section.isPresent()) {
            for (double metres : section.get().supports().supportMetres()) {
                FixingMarks.support(run, way, metres * 1000).forEach(each -> mark(run.id(), "support", each));
            }
            for (double metres : section.get().supports().tieMetres()) {
                FixingMarks.tie(run, way, metres * 1000).forEach(each -> mark(run.id(), "tie", each));
            }
        }
        along.markings(segment.id())
                .keySet()
                .forEach(at -> mark(run.id(), "markings of wires", FixingMarks.flag(run, way, within(run, at))));
        for (Splice splice : along.splices(segment.id())) {
            mark(splice.id().value(), "splice", FixingMarks.splice(run, way, within(run, AlongRuns.atMm(splice))));
        }
    }

    /** How far from a node the end of a covering is drawn: clear of the other bundles there. */
    private double inset(FormRun run, int node) {
        double widest = current.runs().stream()
                .filter(each -> each != run && each.touches(node))
                .mapToDouble(FormRun::widthMm)
                .max()
                .orElse(0);
        return Math.min(COVERING_INSET_MM + widest / 2, run.lengthMm() / 3);
    }

    private static double within(FormRun run, double atMm) {
        return Math.max(0, Math.min(run.lengthMm(), atMm));
    }

    /** How many wires are marked at a flag, when it is more than one. */
    private void markings(FormRun run, Way way) {
        along.markings(segment(run).id()).forEach((at, count) -> {
            if (count > 1) {
                Point flag =
                        FixingMarks.flag(run, way, within(run, at)).bounds().centre();
                String words = "×" + count;
                write(run.id(), around(words, flag, SMALL_MM, Weight.REGULAR, Ink.SOFT_TEXT), Optional.of(flag));
            }
        });
    }

    private void mark(String element, String description, Mark mark) {
        room.take(mark.bounds().grown(-0.2));
        items.add(Item.of(Layer.CONNECTORS, mark, element, element + ", " + description));
    }

    private void write(String element, List<Text> candidates, Optional<Point> named) {
        room.place(candidates, named).ifPresent(text -> items.add(Item.of(Layer.NUMBERS, text, element, text.text())));
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
        for (double reach = 2.5; reach < 400; reach *= 1.3) {
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
