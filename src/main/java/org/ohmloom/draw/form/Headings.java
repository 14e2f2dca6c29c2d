package org.ohmloom.draw.form;

import org.ohmloom.draw.Point;

/** Directions on the board: degrees clockwise from the right. */
final class Headings {

    private Headings() {}

    /** The same direction from 0 to below 360. */
    static double normal(double degrees) {
        double rest = degrees % 360;
        return rest < 0 ? rest + 360 : rest;
    }

    /** Angle between two directions, 0 to 180. */
    static double between(double one, double other) {
        double angle = normal(one - other);
        return Math.min(angle, 360 - angle);
    }

    static double cos(double degrees) {
        return degrees % 90 == 0 ? Math.rint(Math.cos(Math.toRadians(degrees))) : Math.cos(Math.toRadians(degrees));
    }

    static double sin(double degrees) {
        return degrees % 90 == 0 ? Math.rint(Math.sin(Math.toRadians(degrees))) : Math.sin(Math.toRadians(degrees));
    }

    /** The point so far away in a direction. */
    static Point from(Point point, double degrees, double lengthMm) {
        return point.plus(lengthMm * cos(degrees), lengthMm * sin(degrees));
    }

    /** The direction from one point to another. */
    static double to(Point from, Point to) {
        return normal(Math.toDegrees(Math.atan2(to.yMm() - from.yMm(), to.xMm() - from.xMm())));
    }
}
