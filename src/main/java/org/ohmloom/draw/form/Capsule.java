package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/**
 * A straight stretch with the room it takes to all sides.
 *
 * @param a       one end
 * @param b       the other
 * @param reachMm room around it, mm, 0 or more
 * @param owner   what lies there: the number of a run, or a code of {@link Room}
 */
record Capsule(Point a, Point b, double reachMm, int owner) {

    private static final double ROW_MM = 12;

    /** Whether it shares room with another. */
    boolean meets(Capsule other) {
        double least = reachMm + other.reachMm;
        if (Math.min(a.xMm(), b.xMm()) - least > Math.max(other.a.xMm(), other.b.xMm())
                || Math.min(other.a.xMm(), other.b.xMm()) - least > Math.max(a.xMm(), b.xMm())
                || Math.min(a.yMm(), b.yMm()) - least > Math.max(other.a.yMm(), other.b.yMm())
                || Math.min(other.a.yMm(), other.b.yMm()) - least > Math.max(a.yMm(), b.yMm())) {
            return false;
        }
        return distanceMm(a, b, other.a, other.b) < least - 1e-7;
    }

    /** Distance between two stretches, mm; 0 when they cross. */
    static double distanceMm(Point a, Point b, Point c, Point d) {
        if (cross(a, b, c, d)) {
            return 0;
        }
        return Math.min(
                Math.min(a.distanceMm(c, d), b.distanceMm(c, d)), Math.min(c.distanceMm(a, b), d.distanceMm(a, b)));
    }

    /** Whether two stretches cross at an inner point of both. */
    static boolean cross(Point a, Point b, Point c, Point d) {
        return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    }

    private static double side(Point a, Point b, Point p) {
        return (b.xMm() - a.xMm()) * (p.yMm() - a.yMm()) - (b.yMm() - a.yMm()) * (p.xMm() - a.xMm());
    }

    /** A rectangle as level stretches close together. */
    static List<Capsule> of(Extent extent, int owner) {
        double reach = Math.min(ROW_MM, Math.min(extent.widthMm(), extent.heightMm()) / 2);
        double span = extent.heightMm() - 2 * reach;
        int gaps = (int) Math.ceil(span / (1.4 * reach));
        List<Capsule> rows = new ArrayList<>();
        for (int k = 0; k <= gaps; k++) {
            double y = extent.topMm() + reach + (gaps == 0 ? 0 : span * k / gaps);
            rows.add(new Capsule(
                    new Point(extent.leftMm() + reach, y), new Point(extent.rightMm() - reach, y), reach, owner));
        }
        return rows;
    }
}
