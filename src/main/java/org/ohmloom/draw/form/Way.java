package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ohmloom.draw.Point;

/**
 * How a run lies: its centre line from one of its nodes to the other.
 *
 * @param points at least two points; what lies between them adds up to the run's length
 * @param folds  how often it is bent
 */
record Way(List<Point> points, int folds) {

    Way {
        points = List.copyOf(points);
    }

    Point first() {
        return points.get(0);
    }

    Point last() {
        return points.get(points.size() - 1);
    }

    /** The direction it leaves its first point in. */
    double startDegrees() {
        return Headings.to(first(), points.get(1));
    }

    /** The direction it arrives in at its last point. */
    double endDegrees() {
        return Headings.to(points.get(points.size() - 2), last());
    }

    double lengthMm() {
        return lengthMm(points);
    }

    Way reversed() {
        List<Point> back = new ArrayList<>(points);
        Collections.reverse(back);
        return new Way(back, folds);
    }

    Way moved(double dxMm, double dyMm) {
        return new Way(points.stream().map(point -> point.plus(dxMm, dyMm)).toList(), folds);
    }

    static double lengthMm(List<Point> points) {
        double sum = 0;
        for (int k = 1; k < points.size(); k++) {
            sum += points.get(k - 1).distanceMm(points.get(k));
        }
        return sum;
    }

    /** The point so far along a line, mm. */
    static Point along(List<Point> points, double lengthMm) {
        double left = lengthMm;
        for (int k = 1; k < points.size(); k++) {
            double step = points.get(k - 1).distanceMm(points.get(k));
            if (left <= step || k == points.size() - 1) {
                return step == 0 ? points.get(k) : points.get(k - 1).towards(points.get(k), left / step);
            }
            left -= step;
        }
        return points.get(0);
    }

    /** The part of a line between two distances from its start, mm. */
    static List<Point> part(List<Point> points, double fromMm, double toMm) {
        List<Point> part = new ArrayList<>(List.of(along(points, fromMm)));
        double at = 0;
        for (int k = 1; k < points.size(); k++) {
            at += points.get(k - 1).distanceMm(points.get(k));
            if (at > fromMm + 1e-9 && at < toMm - 1e-9) {
                part.add(points.get(k));
            }
        }
        part.add(along(points, toMm));
        return part;
    }
}
