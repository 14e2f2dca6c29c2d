package org.ohmloom.draw;

import java.util.List;

/**
 * Where a scene lies in another: made larger or smaller, then moved.
 *
 * @param scale factor, more than 0
 * @param dxMm  then to the right, mm
 * @param dyMm  then down, mm
 */
public record Placement(double scale, double dxMm, double dyMm) {

    /** Moved only. */
    public static Placement moved(double dxMm, double dyMm) {
        return new Placement(1, dxMm, dyMm);
    }

    /** Where a point comes to lie. */
    public Point of(Point point) {
        return new Point(x(point.xMm()), y(point.yMm()));
    }

    List<Point> of(List<Point> points) {
        return points.stream().map(this::of).toList();
    }

    double x(double xMm) {
        return xMm * scale + dxMm;
    }

    double y(double yMm) {
        return yMm * scale + dyMm;
    }

    double length(double lengthMm) {
        return lengthMm * scale;
    }
}
