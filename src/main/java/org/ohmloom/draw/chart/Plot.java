package org.ohmloom.draw.chart;

import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.words.Text;

/**
 * The frame of a chart: heading, axes with their numbers, grid, and where a value lies in it.
 *
 * @param area   the rectangle values are drawn in
 * @param across axis from left to right
 * @param left   axis upwards, numbers at the left
 * @param right  second axis upwards, numbers at the right
 * @param headMm room right above the rectangle for names of stretches of time, mm, 0 or more
 */
record Plot(Extent area, Axis across, Axis left, Optional<Axis> right, double headMm) {

    private static final double GAP_MM = 1.2;
    private static final double ROW_MM = 4.2;

    /** Between the plot and the numbers below it, so that they keep clear of those beside it, mm. */
    private static final double BELOW_MM = 2;

    private static final double EDGE_MM = 1.5;

    /**
     * Lays out the frame.
     *
     * @param size      the whole chart
     * @param headingMm room that the heading takes with the edge above it, mm
     * @param headMm    room kept free right above the rectangle, mm
     * @param footMm    room kept free below the axis, mm
     */
    static Plot in(
            Extent size,
            double headingMm,
            double headMm,
            double footMm,
            Axis across,
            Axis left,
            Optional<Axis> right,
            Pen pen) {
        double top = headingMm + ROW_MM + headMm;
        double bottom = size.bottomMm() - EDGE_MM - footMm - 2 * ROW_MM - 0.4;
        double leftMm = size.leftMm() + EDGE_MM + numbersMm(left, pen) + GAP_MM;
        double rightMm = size.rightMm()
                - EDGE_MM
                - right.map(axis -> numbersMm(axis, pen) + GAP_MM).orElse(lastMm(across, pen) / 2);
        return new Plot(new Extent(leftMm, top, rightMm, bottom), across, left, right, headMm);
    }

    private static double numbersMm(Axis axis, Pen pen) {
        return axis.ticks().stream()
                .mapToDouble(tick -> pen.widthMm(tick.label()))
                .max()
                .orElse(0);
    }

    private static double lastMm(Axis axis, Pen pen) {
        return pen.widthMm(axis.ticks().get(axis.ticks().size() - 1).label());
    }

    double x(double value) {
        return area.leftMm() + across.fraction(value) * area.widthMm();
    }

    double y(Axis axis, double value) {
        return area.bottomMm() - axis.fraction(value) * area.heightMm();
    }

    /** Draws heading, grid and numbers. */
    void draw(Pen pen, Extent size, Text title, Text subtitle) {
        pen.heading(title, subtitle, size.widthMm());
        draw(pen);
    }

    /** Draws grid and numbers. */
    void draw(Pen pen) {
        grid(pen);
        numbers(pen);
        headings(pen);
    }

    private void grid(Pen pen) {
        for (Tick tick : across.ticks()) {
            double x = x(tick.value());
            upright(pen, x, !tick.label().isEmpty());
        }
        for (Tick tick : left.ticks()) {
            double y = y(left, tick.value());
            if (inside(y, area.topMm(), area.bottomMm())) {
                pen.line(
                        Layer.ZONES,
                        tick.label().isEmpty() ? Pen.GRID_MM * 0.6 : Pen.GRID_MM,
                        Ink.RULE,
                        LinePattern.CONTINUOUS,
                        new Point(area.leftMm(), y),
                        new Point(area.rightMm(), y));
            }
        }
        pen.put(Layer.BUNDLES, new Box(area, 0, Fill.edge(Ink.SOFT_TEXT, Pen.FRAME_MM)));
    }

    private void upright(Pen pen, double x, boolean numbered) {
        if (inside(x, area.leftMm(), area.rightMm())) {
            pen.line(
                    Layer.ZONES,
                    numbered ? Pen.GRID_MM : Pen.GRID_MM * 0.6,
                    Ink.RULE,
                    LinePattern.CONTINUOUS,
                    new Point(x, area.topMm()),
                    new Point(x, area.bottomMm()));
        }
    }

    private static boolean inside(double value, double from, double to) {
        return value > from + 0.05 && value < to - 0.05;
    }

    private void numbers(Pen pen) {
        double free = Double.NEGATIVE_INFINITY;
        double y = area.bottomMm() + BELOW_MM + Pen.LETTER_MM;
        for (Tick tick : across.ticks()) {
            double half = pen.widthMm(tick.label()) / 2;
            double x = x(tick.value());
            if (!tick.label().isEmpty() && x - half > free) {
                pen.put(Layer.SHEET, pen.text(tick.label(), new Point(x, y), Anchor.MIDDLE, Ink.SOFT_TEXT));
                free = x + half + GAP_MM;
            }
        }
        upwards(pen, left, area.leftMm() - GAP_MM, Anchor.END);
        right.ifPresent(axis -> upwards(pen, axis, area.rightMm() + GAP_MM, Anchor.START));
    }

    private void upwards(Pen pen, Axis axis, double x, Anchor anchor) {
        double free = Double.POSITIVE_INFINITY;
        for (Tick tick : axis.ticks()) {
            double y = y(axis, tick.value()) + Pen.LETTER_MM / 2;
            if (!tick.label().isEmpty() && y < free) {
                pen.put(Layer.SHEET, pen.text(tick.label(), new Point(x, y), anchor, Ink.SOFT_TEXT));
                free = y - Pen.LETTER_MM - GAP_MM;
            }
        }
    }

    private void headings(Pen pen) {
        double above = area.topMm() - headMm - GAP_MM - Pen.LETTER_MM * 0.4;
        double below = area.bottomMm() + BELOW_MM + Pen.LETTER_MM + ROW_MM * 0.9;
        double outer = Math.min(area.leftMm(), EDGE_MM);
        pen.put(Layer.SHEET, pen.text(left.heading(), new Point(outer, above), Anchor.START, Ink.TEXT));
        right.ifPresent(axis -> pen.put(
                Layer.SHEET,
                pen.text(
                        axis.heading(),
                        new Point(
                                area.rightMm()
                                        + GAP_MM
                                        + axis.ticks().stream()
                                                .mapToDouble(tick -> pen.widthMm(tick.label()))
                                                .max()
                                                .orElse(0),
                                above),
                        Anchor.END,
                        Ink.TEXT)));
        pen.put(Layer.SHEET, pen.text(across.heading(), new Point(area.rightMm(), below), Anchor.END, Ink.TEXT));
    }

    /** The point of a value on an axis upwards. */
    Point point(Axis axis, double value, double upwards) {
        return new Point(x(value), y(axis, upwards));
    }

    /** The upper left corner and size of a text beside a point: 1 to the right or above, -1 to the left or below. */
    static Extent beside(Point point, double widthMm, int sideways, int upwards, double gapMm) {
        double left = sideways > 0
                ? point.xMm() + gapMm
                : sideways < 0 ? point.xMm() - gapMm - widthMm : point.xMm() - widthMm / 2;
        double height = Pen.LETTER_MM * 1.37;
        double top = upwards > 0
                ? point.yMm() - gapMm - height
                : upwards < 0 ? point.yMm() + gapMm : point.yMm() - height / 2;
        return Extent.at(left, top, widthMm, height);
    }

    /** Where the text starts that fills a rectangle made by {@link #beside}. */
    static Point base(Extent extent) {
        return new Point(extent.leftMm(), extent.topMm() + Pen.LETTER_MM * 1.06);
    }

    /** All of a list's points cut to the plot. */
    List<List<Point>> cut(List<Point> points) {
        return Clip.line(points, area);
    }
}
