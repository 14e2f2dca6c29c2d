package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;

/** The marks along the runs of a printed board. */
final class Symbols {

    private static final double ARROW_MM = 1.8;
    private static final double ARROW_HALF_MM = 0.32;
    private static final double OVER_MM = 0.7;
    private static final double COVER_MM = 0.45;

    private Symbols() {}

    /** A line from point to point, on one level, with an arrow at each end. */
    static List<Mark> dimension(Point left, Point right) {
        List<Mark> marks = new ArrayList<>();
        marks.add(Line.of(SheetPen.THIN_MM, Ink.TEXT, left, right));
        double length = Math.min(ARROW_MM, Math.max(0.2, (right.xMm() - left.xMm()) / 2));
        marks.add(arrow(left, length));
        marks.add(arrow(right, -length));
        return marks;
    }

    private static Mark arrow(Point tip, double length) {
        return new Area(
                List.of(tip, tip.plus(length, -ARROW_HALF_MM), tip.plus(length, ARROW_HALF_MM)), Fill.of(Ink.TEXT));
    }

    /** The short upright line from a run up to its dimension and a little beyond. */
    static Mark extension(double x, double fromY, double toY) {
        return Line.of(SheetPen.THIN_MM, Ink.TEXT, new Point(x, fromY), new Point(x, toY - 0.5));
    }

    /** A covering: a line on both sides of the bundle from a bar at its start to a bar at its end. */
    static List<Mark> covering(Point from, double toX, double halfMm) {
        double y = from.yMm();
        double off = halfMm + COVER_MM;
        List<Mark> marks = new ArrayList<>();
        for (int side : new int[] {-1, 1}) {
            Point start = new Point(from.xMm(), y + side * off);
            marks.add(Line.of(SheetPen.THIN_MM, Ink.TEXT, start, new Point(toX, y + side * off)));
        }
        for (double x : new double[] {from.xMm(), toX}) {
            Point top = new Point(x, y - halfMm - OVER_MM);
            marks.add(Line.of(0.5, Ink.TEXT, top, new Point(x, y + halfMm + OVER_MM)));
        }
        return marks;
    }

    /** A support: a triangle on the bundle. */
    static Mark support(Point at) {
        return new Area(
                List.of(at.plus(-1.2, 0.85), at.plus(1.2, 0.85), at.plus(0, -1.25)),
                Fill.of(Ink.PLATE, Ink.TEXT, 0.25));
    }

    /** A tie: a narrow band across the bundle. */
    static Mark tie(Point at, double halfMm) {
        double off = halfMm + 0.6;
        return new Box(
                new Extent(at.xMm() - 0.4, at.yMm() - off, at.xMm() + 0.4, at.yMm() + off),
                0,
                Fill.of(Ink.PLATE, Ink.TEXT, SheetPen.THIN_MM));
    }

    /** A label: a sleeve round the bundle. */
    static Mark label(Point at, double halfMm) {
        double off = halfMm + 0.4;
        return new Box(
                new Extent(at.xMm() - 1.4, at.yMm() - off, at.xMm() + 1.4, at.yMm() + off),
                0.3,
                Fill.of(Ink.PLATE, Ink.TEXT, SheetPen.THIN_MM));
    }
}
