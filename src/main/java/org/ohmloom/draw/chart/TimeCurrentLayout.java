package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.words.Text;

/** Draws one time-current chart on one rectangle. */
final class TimeCurrentLayout {

    private static final double ROW_MM = 4;
    private static final double DOT_MM = 0.65;

    /** Lines of the curves start behind the one of the band. */
    private static final int FIRST_CURVE = 1;

    private final TimeCurrentChart chart;
    private final Extent size;
    private final List<Key.Entry> keyed;
    private final Pen pen;
    private final Key key;
    private final Plot plot;
    private final Labels labels;
    private final List<List<Point>> lines = new ArrayList<>();
    private final List<Runnable> wanted = new ArrayList<>();
    private final List<Key.Entry> homeless = new ArrayList<>();

    TimeCurrentLayout(TimeCurrentChart chart, Extent size, SceneFonts fonts, List<Key.Entry> keyed) {
        this.chart = chart;
        this.size = size;
        this.keyed = keyed;
        this.pen = new Pen(fonts);
        this.key = new Key(pen, size.widthMm() - 4, keyed);
        this.plot = Plot.in(
                size,
                Pen.headingMm(chart.subtitle()),
                0,
                key.heightMm(),
                chart.currentAxis(),
                TimeCurrentChart.timeAxis(),
                Optional.empty(),
                pen);
        this.labels = new Labels(plot.area());
    }

    Scene scene() {
        return new Scene(size.widthMm(), size.heightMm(), pen.items());
    }

    /** Draws everything; the lines whose label found no place of its own. */
    List<Key.Entry> draw() {
        plot.draw(pen, size, chart.title(), chart.subtitle());
        for (int k = 0; k < chart.bands().size(); k++) {
            band(chart.bands().get(k), k);
        }
        for (int k = 0; k < chart.curves().size(); k++) {
            curve(chart.curves().get(k), LineLook.of(FIRST_CURVE + k));
        }
        chart.currents().forEach(this::current);
        wanted.forEach(Runnable::run);
        key.draw(size);
        return homeless;
    }

    private void band(OpeningBand band, int index) {
        double never = plot.left().to();
        List<TimeCurrentCurve.At> latest = band.latest(plot.across().to(), never);
        List<TimeCurrentCurve.At> soonest = band.soonest(never);
        LineLook look = index == 0
                ? new LineLook(Ink.CHART_FIRST, LinePattern.CONTINUOUS)
                : new LineLook(Ink.SOFT_TEXT, LinePattern.DASHED);
        if (index == 0 && !latest.isEmpty() && !soonest.isEmpty()) {
            fill(latest, soonest);
        }
        if (!soonest.isEmpty()) {
            TimeCurrentCurve.At last = soonest.get(soonest.size() - 1);
            List<TimeCurrentCurve.At> whole = new ArrayList<>(soonest);
            whole.add(new TimeCurrentCurve.At(last.amps(), plot.left().from()));
            steps(band, whole, new LineLook(look.ink(), LinePattern.DASHED), ChartTexts.text("opens-no-sooner"));
        }
        List<Point> upper = steps(band, latest, look, ChartTexts.text("opens-no-later"));
        for (OpeningBand.Row row : band.rows()) {
            row.minimumSeconds().ifPresent(seconds -> dot(row.amps(), seconds, look));
            row.maximumSeconds().ifPresent(seconds -> dot(row.amps(), seconds, look));
        }
        label(band.label(), upper, look);
    }

    private void dot(double amps, double seconds, LineLook look) {
        Point point = point(amps, seconds);
        if (plot.area().contains(point)) {
            pen.put(Layer.CONNECTORS, new Disc(point, DOT_MM, Fill.of(look.ink())));
        }
    }

    private List<Point> steps(OpeningBand band, List<TimeCurrentCurve.At> line, LineLook look, Text what) {
        List<Point> points =
                line.stream().map(at -> point(at.amps(), at.seconds())).toList();
        for (List<Point> part : plot.cut(points)) {
            pen.put(
                    Layer.WIRES,
                    new Line(part, Pen.LINE_MM * 0.8, look.ink(), look.pattern()),
                    band.element(),
                    Text.joined(": ", List.of(band.label(), what)));
            lines.add(part);
            labels.avoid(part);
        }
        return points;
    }

    private void fill(List<TimeCurrentCurve.At> latest, List<TimeCurrentCurve.At> soonest) {
        List<Point> around = new ArrayList<>();
        latest.forEach(at -> around.add(within(point(at.amps(), at.seconds()))));
        around.add(new Point(plot.area().rightMm(), plot.area().bottomMm()));
        TimeCurrentCurve.At last = soonest.get(soonest.size() - 1);
        around.add(within(point(last.amps(), plot.left().from())));
        for (int k = soonest.size() - 1; k >= 0; k--) {
            around.add(within(point(soonest.get(k).amps(), soonest.get(k).seconds())));
        }
        pen.put(Layer.ZONES, new Area(around, Fill.of(Ink.CHART_BAND)));
    }

    /** The point, or the nearest one on the sides of the plot. */
    private Point within(Point point) {
        Extent area = plot.area();
        return new Point(
                Math.max(area.leftMm(), Math.min(area.rightMm(), point.xMm())),
                Math.max(area.topMm(), Math.min(area.bottomMm(), point.yMm())));
    }

    private Point point(double amps, double seconds) {
        return new Point(plot.x(amps), plot.y(plot.left(), seconds));
    }

    private void curve(TimeCurrentCurve curve, LineLook look) {
        List<Point> points = curve.points().stream()
                .map(at -> point(at.amps(), at.seconds()))
                .toList();
        if (points.size() == 1) {
            pen.put(
                    Layer.CONNECTORS,
                    new Disc(points.get(0), 2 * DOT_MM, Fill.of(Ink.GROUND, look.ink(), Pen.LINE_MM)),
                    curve.element(),
                    curve.label());
            wanted.add(() -> around(curve.label(), points.get(0), look));
            return;
        }
        List<List<Point>> parts = plot.cut(points);
        for (List<Point> part : parts) {
            pen.put(
                    Layer.WIRES,
                    new Line(part, Pen.LINE_MM, look.ink(), look.pattern()),
                    curve.element(),
                    curve.label());
            lines.add(part);
            labels.avoid(part);
        }
        if (!parts.isEmpty()) {
            label(curve.label(), points, look);
        }
    }

    private void current(CurrentLimit current) {
        double x = plot.x(current.amps());
        Extent area = plot.area();
        if (x < area.leftMm() || x > area.rightMm()) {
            return;
        }
        List<Point> line = List.of(new Point(x, area.bottomMm()), new Point(x, area.topMm()));
        pen.put(
                Layer.WIRES,
                switch (current.kind()) {
                    case CONTINUOUS -> new Line(line, Pen.LINE_MM * 0.7, Ink.TEXT, LinePattern.DOTTED);
                    case USE -> new Line(line, Pen.LINE_MM * 0.7, Ink.SOFT_TEXT, LinePattern.DASH_DOT);
                    case FAULT -> new Line(line, Pen.LINE_MM * 0.7, Ink.CAUTION, LinePattern.LONG_DASH_DOT);
                },
                Optional.empty(),
                current.label());
        labels.avoid(line);
        lines.add(line);
        wanted.add(0, () -> upright(current, x));
    }

    /** The label of an upright line: beside it, at the highest free row. */
    private void upright(CurrentLimit current, double x) {
        double width = pen.widthMm(current.label());
        List<Labels.Place> places = new ArrayList<>();
        double top = plot.area().topMm() + ROW_MM / 2 + 0.3;
        for (double y = top; y < plot.area().bottomMm(); y += ROW_MM / 2) {
            Point at = new Point(x, y);
            places.add(new Labels.Place(Plot.beside(at, width, 1, 0, 0.7), y - top));
            places.add(new Labels.Place(Plot.beside(at, width, -1, 0, 0.7), y - top + 0.5));
        }
        write(current.label(), labels.find(places));
    }

    private void around(Text label, Point point, LineLook look) {
        if (isKeyed(label)) {
            return;
        }
        double width = pen.widthMm(label);
        List<Labels.Place> places = new ArrayList<>();
        for (double gap : new double[] {1.6, 3, 5, 8}) {
            for (int sideways : new int[] {1, -1, 0}) {
                for (int upwards : new int[] {0, 1, -1}) {
                    if (sideways != 0 || upwards != 0) {
                        places.add(new Labels.Place(Plot.beside(point, width, sideways, upwards, gap), 3 * gap));
                    }
                }
            }
        }
        Optional<Labels.Found> found = labels.find(places);
        if (found.isEmpty()) {
            homeless.add(new Key.Entry(look, label));
        }
        write(label, found);
    }

    private void label(Text label, List<Point> line, LineLook look) {
        wanted.add(() -> {
            if (isKeyed(label)) {
                return;
            }
            List<Labels.Place> places = new ArrayList<>();
            double width = pen.widthMm(label);
            places.addAll(new LinePlaces(plot.area(), lines).of(line, width));
            for (List<Point> part : plot.cut(line)) {
                for (Point at : along(part)) {
                    double down = (at.yMm() - plot.area().topMm()) * 0.1;
                    places.add(new Labels.Place(Plot.beside(at, width, 1, 0, 1), 4 + down));
                    places.add(new Labels.Place(Plot.beside(at, width, -1, 0, 1), 6 + down));
                    places.add(new Labels.Place(Plot.beside(at, width, 1, 1, 0.8), 5 + down));
                }
            }
            Optional<Labels.Found> found = labels.find(places).filter(Labels.Found::clear);
            if (found.isEmpty()) {
                homeless.add(new Key.Entry(look, label));
            }
            write(label, found);
        });
    }

    /** Points along a line, a few millimetres apart. */
    private static List<Point> along(List<Point> line) {
        List<Point> points = new ArrayList<>();
        for (int k = 1; k < line.size(); k++) {
            Point from = line.get(k - 1);
            Point to = line.get(k);
            int steps = (int) Math.max(1, from.distanceMm(to) / 3);
            for (int step = 0; step < steps; step++) {
                points.add(from.towards(to, step / (double) steps));
            }
        }
        return points;
    }

    private boolean isKeyed(Text label) {
        return keyed.stream().anyMatch(entry -> entry.label().equals(label));
    }

    private void write(Text label, Optional<Labels.Found> found) {
        found.ifPresent(place -> {
            // even where no curve runs through, the close lines of a logarithmic grid do
            pen.plate(Layer.CONNECTORS, place.extent(), Ink.GROUND);
            pen.put(Layer.NUMBERS, pen.text(label, Plot.base(place.extent()), Anchor.START, Ink.TEXT));
        });
    }
}
