package org.ohmloom.draw;

import java.util.List;

/**
 * A line through points.
 *
 * @param points  at least two points
 * @param widthMm line width, mm, more than 0
 * @param ink     colour
 * @param pattern dashes
 */
public record Line(List<Point> points, double widthMm, Ink ink, LinePattern pattern) implements Mark {

    public Line {
        points = List.copyOf(points);
        if (points.size() < 2 || !(widthMm > 0)) {
            throw new IllegalArgumentException("a line needs two points and a width, had " + points + ", " + widthMm);
        }
    }

    /** A continuous line. */
    public static Line of(double widthMm, Ink ink, Point... points) {
        return new Line(List.of(points), widthMm, ink, LinePattern.CONTINUOUS);
    }

    @Override
    public Extent bounds() {
        return Extent.around(points).grown(widthMm / 2);
    }

    @Override
    public boolean hits(Point point, double toleranceMm) {
        double reachMm = widthMm / 2 + toleranceMm;
        for (int k = 1; k < points.size(); k++) {
            if (point.distanceMm(points.get(k - 1), points.get(k)) <= reachMm) {
                return true;
            }
        }
        return false;
    }

    @Override
    public Line placed(Placement placement) {
        return new Line(placement.of(points), placement.length(widthMm), ink, pattern);
    }

    @Override
    public String dump() {
        return "line " + Dump.points(points) + " width " + Dump.mm(widthMm) + " " + Dump.word(ink)
                + (pattern == LinePattern.CONTINUOUS ? "" : " " + Dump.word(pattern));
    }
}
