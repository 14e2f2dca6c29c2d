package org.ohmloom.draw.chart;

import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.units.Dimension;
import org.ohmloom.words.Text;

/**
 * What depends on a value in a unit of its own: one curve at the left axis, a second one at the right axis where there is one.
 *
 * @param title    what it shows
 * @param subtitle under which conditions; may be empty
 * @param heading  what runs across, with its unit
 * @param first    the curve at the left
 * @param second   the curve at the right, if there is one
 * @param element  id of the element it belongs to
 */
public record CurveChart(Text title, Text subtitle, Text heading, Curve first, Optional<Curve> second, String element) {

    private static final double KEY_MM = 5;
    private static final double SAMPLE_MM = 12;
    private static final double GAP_MM = 1.2;
    private static final double EDGE_MM = 1.5;
    private static final int MOST_STEPS = 8;
    private static final int MOST_UPWARDS = 5;

    /** Half the width of the mark of a row, mm. */
    private static final double ROW_MM = 0.7;

    /**
     * A curve.
     *
     * @param name      what it is
     * @param dimension what it is measured in
     * @param samples   its points in order, at least two
     * @param rows      points that are rows of a table, marked
     */
    public record Curve(Text name, Dimension dimension, List<Sample> samples, List<Sample> rows) {
        public Curve {
            samples = List.copyOf(samples);
            rows = List.copyOf(rows);
            if (samples.size() < 2) {
                throw new IllegalArgumentException("a curve has two points, " + name + " has " + samples.size());
            }
        }
    }

    /**
     * A point of a curve.
     *
     * @param across  the value it depends on, in its own unit
     * @param upwards what it is there, canonical unit
     */
    public record Sample(double across, double upwards) {}

    /** Lays the chart out in a size. */
    public Scene scene(SceneFonts fonts, double widthMm, double heightMm) {
        Pen pen = new Pen(fonts);
        pen.heading(title, subtitle, widthMm);
        return scene(pen, Pen.headingMm(subtitle), widthMm, heightMm);
    }

    /** The same without a heading, for a place that has one. */
    public Scene unheaded(SceneFonts fonts, double widthMm, double heightMm) {
        return scene(new Pen(fonts), EDGE_MM, widthMm, heightMm);
    }

    private Scene scene(Pen pen, double headingMm, double widthMm, double heightMm) {
        double from = first.samples().get(0).across();
        double to = first.samples().get(first.samples().size() - 1).across();
        Axis across = Axes.plain(heading, Math.min(from, to), Math.max(from, to), MOST_STEPS);
        Axis left = axis(first);
        Optional<Axis> right = second.map(CurveChart::axis);
        Extent size = new Extent(0, 0, widthMm, heightMm);
        Plot plot = Plot.in(size, headingMm, 0, KEY_MM, across, left, right, pen);
        plot.draw(pen);
        draw(pen, plot, left, first, 0);
        second.ifPresent(curve -> draw(pen, plot, right.orElseThrow(), curve, 1));
        key(pen, heightMm - EDGE_MM);
        return new Scene(widthMm, heightMm, pen.items());
    }

    private static Axis axis(Curve curve) {
        double least =
                curve.samples().stream().mapToDouble(Sample::upwards).min().orElse(0);
        double most =
                curve.samples().stream().mapToDouble(Sample::upwards).max().orElse(1);
        return Axes.linear(curve.dimension(), Math.min(0, least), most, MOST_UPWARDS);
    }

    private void draw(Pen pen, Plot plot, Axis axis, Curve curve, int index) {
        LineLook look = LineLook.of(index);
        List<Point> points = curve.samples().stream()
                .map(each -> plot.point(axis, each.across(), each.upwards()))
                .toList();
        for (List<Point> piece : plot.cut(points)) {
            pen.put(
                    Layer.WIRES,
                    new Line(piece, Pen.LINE_MM, look.ink(), look.pattern()),
                    Optional.of(element),
                    Text.joined(", ", List.of(title, curve.name())));
        }
        for (Sample row : curve.rows()) {
            Point at = plot.point(axis, row.across(), row.upwards());
            pen.line(
                    Layer.CONNECTORS,
                    Pen.FRAME_MM,
                    look.ink(),
                    LinePattern.CONTINUOUS,
                    at.plus(-ROW_MM, -ROW_MM),
                    at.plus(ROW_MM, ROW_MM));
            pen.line(
                    Layer.CONNECTORS,
                    Pen.FRAME_MM,
                    look.ink(),
                    LinePattern.CONTINUOUS,
                    at.plus(-ROW_MM, ROW_MM),
                    at.plus(ROW_MM, -ROW_MM));
        }
    }

    private void key(Pen pen, double y) {
        double x = EDGE_MM;
        List<Curve> curves = second.map(each -> List.of(first, each)).orElse(List.of(first));
        for (int k = 0; k < curves.size(); k++) {
            LineLook look = LineLook.of(k);
            double middle = y - Pen.LETTER_MM / 2;
            pen.line(
                    Layer.SHEET,
                    Pen.LINE_MM,
                    look.ink(),
                    look.pattern(),
                    new Point(x, middle),
                    new Point(x + SAMPLE_MM, middle));
            x += SAMPLE_MM + GAP_MM;
            Text name = curves.get(k).name();
            pen.put(Layer.SHEET, pen.text(name, new Point(x, y), Anchor.START, Ink.TEXT));
            x += pen.widthMm(name) + 3 * GAP_MM;
        }
    }
}
