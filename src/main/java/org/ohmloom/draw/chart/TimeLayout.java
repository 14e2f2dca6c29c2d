package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Anchor;
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
import org.ohmloom.draw.Weight;
import org.ohmloom.units.Dimension;
import org.ohmloom.words.Text;

/** Draws one time chart on one rectangle. */
final class TimeLayout {

    private static final double SPAN_ROW_MM = 4;
    private static final double RING_MM = 0.9;

    /** A step upwards, and one of time, takes at least so much room, mm. */
    private static final double STEP_MM = 9;

    private static final double TIME_STEP_MM = 16;

    private final TimeChart chart;
    private final Extent size;
    private final List<Integer> keyed;
    private final Pen pen;
    private final Key key;
    private final Plot plot;
    private final Labels labels;
    private final List<List<Point>> traces = new ArrayList<>();
    private final List<List<Point>> lines = new ArrayList<>();

    TimeLayout(TimeChart chart, Extent size, SceneFonts fonts, List<Integer> keyed) {
        this.chart = chart;
        this.size = size;
        this.keyed = keyed;
        this.pen = new Pen(fonts);
        this.key = new Key(
                pen,
                size.widthMm() - 4,
                keyed.stream()
                        .map(index -> new Key.Entry(
                                LineLook.of(index), chart.traces().get(index).label()))
                        .toList());
        Axis left = chart.axis(0, Optional.empty(), Math.max(2, Math.min(6, (int) ((size.heightMm() - 24) / STEP_MM))))
                .orElseThrow();
        Axis across = chart.timeAxis(Math.max(2, Math.min(10, (int) (size.widthMm() / TIME_STEP_MM))));
        this.plot = Plot.in(
                size,
                Pen.headingMm(chart.subtitle()),
                chart.spans().isEmpty() ? 0 : SPAN_ROW_MM,
                key.heightMm(),
                across,
                left,
                chart.axis(1, Optional.of(left), left.steps()),
                pen);
        this.labels = new Labels(plot.area());
    }

    Scene scene() {
        return new Scene(size.widthMm(), size.heightMm(), pen.items());
    }

    /** Draws everything; the indices of the traces whose label found no place of its own. */
    List<Integer> draw() {
        for (int k = 0; k < chart.spans().size(); k++) {
            span(chart.spans().get(k), k % 2 == 0);
        }
        plot.draw(pen, size, chart.title(), chart.subtitle());
        for (TimeTrace trace : chart.traces()) {
            Axis axis = axis(trace.dimension());
            traces.add(trace.samples().stream()
                    .map(sample -> plot.point(axis, sample.seconds(), sample.value()))
                    .toList());
        }
        lines.addAll(traces);
        lines.forEach(labels::avoid);
        chart.limits().forEach(this::limit);
        for (int k = 0; k < traces.size(); k++) {
            trace(k);
        }
        chart.marks().forEach(this::mark);
        List<Integer> homeless = new ArrayList<>();
        for (int k = 0; k < traces.size(); k++) {
            if (!keyed.contains(k) && !label(k)) {
                homeless.add(k);
            }
        }
        key.draw(size);
        return homeless;
    }

    private Axis axis(Dimension dimension) {
        boolean first = TimeChart.dimensions(chart.traces()).get(0) == dimension;
        return first ? plot.left() : plot.right().orElse(plot.left());
    }

    private void span(TimeSpan span, boolean tinted) {
        Extent area = plot.area();
        double from = Math.max(area.leftMm(), plot.x(span.fromSeconds()));
        double to = Math.min(area.rightMm(), plot.x(span.toSeconds()));
        if (to - from < 0.05) {
            return;
        }
        Extent strip = new Extent(from, area.topMm() - SPAN_ROW_MM, to, area.bottomMm());
        if (tinted) {
            pen.plate(Layer.ZONES, strip, Ink.CHART_SPAN);
        }
        pen.line(
                Layer.BUNDLES,
                Pen.GRID_MM,
                Ink.SOFT_TEXT,
                LinePattern.CONTINUOUS,
                new Point(to, area.topMm() - SPAN_ROW_MM),
                new Point(to, area.bottomMm()));
        String name = pen.cut(span.label(), Pen.LETTER_MM, Weight.REGULAR, to - from - 2);
        if (!name.isEmpty()) {
            Point at = new Point((from + to) / 2, area.topMm() - 1.2);
            pen.put(Layer.NUMBERS, pen.text(name, at, Anchor.MIDDLE, Ink.SOFT_TEXT));
        }
    }

    private void limit(TimeLimit limit) {
        double y = plot.y(axis(limit.dimension()), limit.value());
        Point from = new Point(plot.area().leftMm(), y);
        Point to = new Point(plot.area().rightMm(), y);
        List<Point> line = List.of(from, to);
        pen.put(Layer.WIRES, new Line(line, Pen.LINE_MM * 0.7, Ink.CAUTION, LinePattern.LONG_DASH_DOT));
        double width = pen.widthMm(limit.label());
        List<Labels.Place> places = new ArrayList<>();
        for (double x = from.xMm() + 1; x + width < to.xMm(); x += 3) {
            double away = Math.min(x - from.xMm(), to.xMm() - x - width);
            Point at = new Point(x, y);
            places.add(new Labels.Place(Plot.beside(at, width, 1, 1, 0.5).moved(-0.5, 0), away));
            places.add(new Labels.Place(Plot.beside(at, width, 1, -1, 0.5).moved(-0.5, 0), away + 1));
        }
        write(limit.label(), labels.find(places));
        labels.avoid(line);
        lines.add(line);
    }

    private void trace(int index) {
        TimeTrace trace = chart.traces().get(index);
        LineLook look = LineLook.of(index);
        List<Point> line = traces.get(index);
        if (line.size() > 1) {
            pen.put(
                    Layer.WIRES,
                    new Line(line, Pen.LINE_MM, look.ink(), look.pattern()),
                    trace.element(),
                    trace.label());
        } else {
            pen.put(Layer.WIRES, new Disc(line.get(0), RING_MM, Fill.of(look.ink())), trace.element(), trace.label());
        }
    }

    private boolean label(int index) {
        if (traces.get(index).size() < 2) {
            return false;
        }
        Text label = chart.traces().get(index).label();
        List<Labels.Place> places = new LinePlaces(plot.area(), lines).of(traces.get(index), pen.widthMm(label));
        Optional<Labels.Found> found = labels.find(places).filter(Labels.Found::clear);
        write(label, found);
        return found.isPresent();
    }

    private void mark(TimeMark mark) {
        Point point = plot.point(axis(mark.dimension()), mark.seconds(), mark.value());
        pen.put(Layer.CONNECTORS, new Disc(point, RING_MM, Fill.of(Ink.GROUND, Ink.TEXT, 0.35)));
        labels.take(Extent.around(List.of(point)).grown(RING_MM));
        double width = pen.widthMm(mark.label());
        List<Labels.Place> places = new ArrayList<>();
        for (double gap : new double[] {1.4, 3, 5, 8, 12}) {
            for (int sideways : new int[] {1, -1, 0}) {
                for (int upwards : new int[] {-1, 1, 0}) {
                    if (sideways != 0 || upwards != 0) {
                        double cost = 3 * gap + (upwards == 0 ? 2 : 0);
                        places.add(new Labels.Place(Plot.beside(point, width, sideways, upwards, gap), cost));
                    }
                }
            }
        }
        write(mark.label(), labels.find(places));
    }

    private void write(Text label, Optional<Labels.Found> found) {
        found.ifPresent(place -> {
            if (!place.clear()) {
                pen.plate(Layer.CONNECTORS, place.extent(), Ink.GROUND);
            }
            pen.put(Layer.NUMBERS, pen.text(label, Plot.base(place.extent()), Anchor.START, Ink.TEXT));
        });
    }
}
