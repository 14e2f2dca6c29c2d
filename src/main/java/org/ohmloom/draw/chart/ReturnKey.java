package org.ohmloom.draw.chart;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Weight;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** What the parts of a picture of returns mean, as far as they occur in it. */
final class ReturnKey {

    private static final double EDGE_MM = 1.5;
    private static final double SAMPLE_MM = 6;
    private static final double GAP_MM = 1.2;
    private static final double BETWEEN_MM = 4;
    private static final double ROW_MM = 4.4;

    private final ReturnPicture picture;
    private final double most;
    private final double widthMm;
    private double x = EDGE_MM;
    private double y;

    /**
     * A key.
     *
     * @param most largest current, A
     */
    ReturnKey(ReturnPicture picture, double most, double widthMm) {
        this.picture = picture;
        this.most = most;
        this.widthMm = widthMm;
    }

    /** Draws it from a height downwards; gives its lower side. */
    double draw(Pen pen, double topMm) {
        y = topMm + 3.6;
        List<ReturnColumn> columns = picture.columns();
        boolean basins = columns.stream().anyMatch(Basin.class::isInstance);
        if (basins) {
            sample(pen, ChartTexts.text("key.ground-point"), at -> basin(pen, at));
            if (most > 0) {
                sample(
                        pen,
                        ChartTexts.text("key.width", Formats.amps(most)),
                        at -> pen.put(
                                Layer.SHEET,
                                new Box(
                                        Extent.at(at.xMm(), at.yMm() - 1.2, SAMPLE_MM, 2.4),
                                        0,
                                        Fill.of(Ink.CHART_BAND, Ink.RETURN, 0.25))));
                sample(
                        pen,
                        ChartTexts.text("key.joint"),
                        at -> pen.put(
                                Layer.SHEET,
                                new Box(
                                        Extent.at(at.xMm(), at.yMm() - 1.2, SAMPLE_MM, 2.4),
                                        0,
                                        Fill.of(Ink.RETURN, Ink.RETURN, 0.25))));
            }
        }
        Set<Gauge.Kind> kinds = new LinkedHashSet<>();
        columns.forEach(column -> {
            if (column instanceof Gauge gauge) {
                kinds.add(gauge.kind());
            }
        });
        kinds.forEach(kind -> sample(
                pen, kind.word(), at -> pen.put(Layer.SHEET, GaugeDrawing.mark(kind, at.plus(SAMPLE_MM / 2, 0)))));
        if (columns.stream().anyMatch(column -> column.rippleVolts() > 0)) {
            sample(pen, ChartTexts.text("key.ripple"), at -> ripple(pen, at));
        }
        if (columns.stream().anyMatch(column -> column.limitVolts().isPresent())) {
            sample(pen, ChartTexts.text("key.limit"), at -> limit(pen, at));
        }
        return y + ROW_MM / 2;
    }

    private static void basin(Pen pen, Point at) {
        pen.put(
                Layer.SHEET,
                Line.of(
                        0.6,
                        Ink.EARTH,
                        at.plus(0.3, -1.6),
                        at.plus(1, 1.2),
                        at.plus(SAMPLE_MM - 1, 1.2),
                        at.plus(SAMPLE_MM - 0.3, -1.6)));
        for (int k = -1; k <= 1; k++) {
            pen.put(Layer.SHEET, new Disc(at.plus(SAMPLE_MM / 2 + k * 1.4, 0.1), 0.5, Fill.of(Ink.EARTH)));
        }
    }

    private static void ripple(Pen pen, Point at) {
        double x = at.xMm() + SAMPLE_MM / 2;
        for (double dy : new double[] {-1.3, 1.3}) {
            pen.put(
                    Layer.SHEET,
                    Line.of(0.35, Ink.TEXT, new Point(x - 0.8, at.yMm() + dy), new Point(x + 0.8, at.yMm() + dy)));
        }
        pen.put(Layer.SHEET, Line.of(0.35, Ink.TEXT, new Point(x, at.yMm() - 1.3), new Point(x, at.yMm() + 1.3)));
    }

    private static void limit(Pen pen, Point at) {
        pen.line(Layer.SHEET, 0.45, Ink.CAUTION, LinePattern.DASHED, at, at.plus(SAMPLE_MM, 0));
    }

    private void sample(Pen pen, Text text, Consumer<Point> drawing) {
        double room = widthMm - 2 * EDGE_MM - SAMPLE_MM - GAP_MM;
        String cut = pen.cut(text, Pen.LETTER_MM, Weight.REGULAR, room);
        double wide = SAMPLE_MM + GAP_MM + pen.widthMm(cut);
        if (x > EDGE_MM && x + wide > widthMm - EDGE_MM) {
            x = EDGE_MM;
            y += ROW_MM;
        }
        Point at = new Point(x, y);
        drawing.accept(at);
        pen.put(Layer.SHEET, pen.text(cut, at.plus(SAMPLE_MM + GAP_MM, Pen.LETTER_MM / 2), Anchor.START, Ink.TEXT));
        x += wide + BETWEEN_MM;
    }
}
