package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.units.Formats;

/**
 * Draws the runs of a piece: each as wide as its finished diameter, its centre line with a tick every 100 mm, leaders, and the pegs
 * that hold it at breakouts and in folds.
 */
final class BundlePen {

    private static final double EDGE_MM = 0.5;
    private static final double CENTRE_MM = 0.25;
    private static final double TICK_MM = 100;
    private static final double PEG_GAP_MM = 1;

    private final Laid laid;
    private final List<Item> items = new ArrayList<>();

    private BundlePen(Laid laid) {
        this.laid = laid;
    }

    static List<Item> items(Laid laid) {
        BundlePen pen = new BundlePen(laid);
        pen.draw();
        return pen.items;
    }

    private void draw() {
        List<FormRun> runs = laid.tree().runs();
        List<List<Integer>> at = laid.tree().runsAt();
        for (boolean inside : new boolean[] {false, true}) {
            for (int k = 0; k < runs.size(); k++) {
                if (!runs.get(k).leader()) {
                    items.add(body(runs.get(k), laid.ways().get(k), inside));
                }
            }
            for (int node = 0; node < at.size(); node++) {
                joint(node, at.get(node), inside);
            }
        }
        for (int k = 0; k < runs.size(); k++) {
            FormRun run = runs.get(k);
            Way way = laid.ways().get(k);
            if (run.leader()) {
                Line line = new Line(way.points(), 0.35, Ink.SOFT_TEXT, LinePattern.CONTINUOUS);
                items.add(Item.of(Layer.WIRES, line, run.id(), run.id()));
            } else {
                centre(run, way);
                foldPegs(run, way);
            }
        }
        for (int node = 0; node < at.size(); node++) {
            breakoutPegs(node, at.get(node));
        }
    }

    /** The body of a run between its two sides, as a shape with square ends. */
    private static Item body(FormRun run, Way way, boolean inside) {
        double half = inside ? Math.max(0.1, run.widthMm() / 2 - EDGE_MM) : run.widthMm() / 2;
        List<Point> around = new ArrayList<>(side(way, half));
        List<Point> back = new ArrayList<>(side(way, -half));
        Collections.reverse(back);
        around.addAll(back);
        String words = run.id() + ", " + Formats.millimetres(run.lengthMm()) + " long, "
                + Formats.millimetres(run.widthMm()) + " thick";
        return Item.of(Layer.BUNDLES, new Area(around, Fill.of(inside ? Ink.CONNECTOR : Ink.BUNDLE)), run.id(), words);
    }

    /** A line beside a way. */
    private static List<Point> side(Way way, double offMm) {
        List<Point> points = way.points();
        List<Point> side = new ArrayList<>();
        for (int k = 0; k < points.size(); k++) {
            double in = Headings.to(points.get(Math.max(0, k - 1)), points.get(Math.max(1, k)));
            int last = points.size() - 1;
            double out = Headings.to(points.get(Math.min(last - 1, k)), points.get(Math.min(last, k + 1)));
            double half = Headings.normal(out - in + 180) - 180;
            double off = offMm / Math.max(0.5, Math.cos(Math.toRadians(half / 2)));
            side.add(Headings.from(points.get(k), in + half / 2 + 90, off));
        }
        return side;
    }

    /** A round body where runs meet. */
    private void joint(int node, List<Integer> runsThere, boolean inside) {
        List<FormRun> bundles = runsThere.stream()
                .map(laid.tree().runs()::get)
                .filter(run -> !run.leader())
                .toList();
        double half = bundles.stream().mapToDouble(FormRun::widthMm).max().orElse(0) / 2;
        if (bundles.size() > 1) {
            Disc disc = new Disc(
                    laid.nodes().get(node),
                    inside ? Math.max(0.1, half - EDGE_MM) : half,
                    Fill.of(inside ? Ink.CONNECTOR : Ink.BUNDLE));
            items.add(Item.of(Layer.BUNDLES, disc));
        } else if (bundles.size() == 1 && inside) {
            int number = runsThere.stream()
                    .filter(each -> !laid.tree().runs().get(each).leader())
                    .findFirst()
                    .orElseThrow();
            Way way = laid.ways().get(number);
            double at = bundles.get(0).from() == node ? 0.001 : way.lengthMm() - 0.001;
            items.add(Item.of(Layer.BUNDLES, across(way, at, half + 1.5, EDGE_MM, Ink.BUNDLE)));
        }
    }

    /** A bundle by itself with its centre line. */
    static List<Item> body(FormRun run, Way way) {
        return List.of(body(run, way, false), body(run, way, true), centreLine(run, way));
    }

    private static Item centreLine(FormRun run, Way way) {
        Line line = new Line(way.points(), CENTRE_MM, Ink.TEXT, LinePattern.LONG_DASH_DOT);
        return Item.of(Layer.WIRES, line, run.id(), run.id() + ", centre line");
    }

    private void centre(FormRun run, Way way) {
        items.add(centreLine(run, way));
        for (double at = TICK_MM; at < run.lengthMm() - 1; at += TICK_MM) {
            double half = Math.round(at / TICK_MM) % 5 == 0 ? 2.4 : 1.2;
            items.add(Item.of(Layer.WIRES, across(way, at, half, 0.25, Ink.TEXT), run.id(), run.id()));
        }
    }

    /** A line across a way at a distance from its beginning. */
    static Line across(Way way, double atMm, double halfMm, double widthMm, Ink ink) {
        Point at = Way.along(way.points(), atMm);
        double degrees = degreesAt(way, atMm) + 90;
        return Line.of(widthMm, ink, Headings.from(at, degrees, -halfMm), Headings.from(at, degrees, halfMm));
    }

    /** The direction of a way at a distance from its beginning, degrees. */
    static double degreesAt(Way way, double atMm) {
        double length = way.lengthMm();
        Point before = Way.along(way.points(), Math.max(0, atMm - 1));
        Point after = Way.along(way.points(), Math.min(length, atMm + 1));
        return Headings.to(before, after);
    }

    /** One peg on the inner side of every fold, at the middle of its arc. */
    private void foldPegs(FormRun run, Way way) {
        List<Point> points = way.points();
        int first = -1;
        for (int k = 1; k < points.size(); k++) {
            boolean bent = k + 1 < points.size()
                    && Headings.between(
                                    Headings.to(points.get(k - 1), points.get(k)),
                                    Headings.to(points.get(k), points.get(k + 1)))
                            > 1;
            if (bent && first < 0) {
                first = k;
            } else if (!bent && first >= 0) {
                peg(inner(run, points, first, k - 1));
                first = -1;
            }
        }
    }

    private static Point inner(FormRun run, List<Point> points, int from, int to) {
        Point a = points.get(from);
        Point b = points.get(to);
        Point middle = points.get((from + to) / 2);
        Point chord = a.distanceMm(b) < 1 ? Way.along(points, 0) : a.towards(b, 0.5);
        double degrees = middle.distanceMm(chord) < 0.01
                ? Headings.to(points.get(from - 1), points.get(to + 1)) + 90
                : Headings.to(middle, chord);
        return Headings.from(middle, degrees, run.widthMm() / 2 + FixingMarks.PEG_MM + PEG_GAP_MM);
    }

    /** Pegs in the forks of a breakout. */
    private void breakoutPegs(int node, List<Integer> runsThere) {
        List<double[]> leaving = new ArrayList<>();
        for (int number : runsThere) {
            FormRun run = laid.tree().runs().get(number);
            Way way = run.from() == node
                    ? laid.ways().get(number)
                    : laid.ways().get(number).reversed();
            if (!run.leader()) {
                leaving.add(new double[] {way.startDegrees(), run.widthMm() / 2});
            }
        }
        leaving.sort((one, other) -> Double.compare(one[0], other[0]));
        if (leaving.size() < 2) {
            return;
        }
        for (int k = 0; k < leaving.size(); k++) {
            double[] one = leaving.get(k);
            double[] next = leaving.get((k + 1) % leaving.size());
            double gap = Headings.normal(next[0] - one[0]);
            if (gap < 25 || gap > 181) {
                continue;
            }
            double reach =
                    (Math.max(one[1], next[1]) + FixingMarks.PEG_MM + PEG_GAP_MM) / Math.sin(Math.toRadians(gap / 2));
            peg(Headings.from(laid.nodes().get(node), one[0] + gap / 2, reach));
        }
    }

    private void peg(Point at) {
        FixingMarks.peg(at)
                .forEach(mark -> items.add(new Item(Layer.WIRES, mark, Optional.empty(), Optional.of("peg"))));
    }
}
