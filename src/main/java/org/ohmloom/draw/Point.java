package org.ohmloom.draw;

/**
 * A point of a scene.
 *
 * @param xMm to the right, mm
 * @param yMm downwards, mm
 */
public record Point(double xMm, double yMm) {

    /** This point moved. */
    public Point plus(double dxMm, double dyMm) {
        return new Point(xMm + dxMm, yMm + dyMm);
    }

    /** Distance to another point, mm. */
    public double distanceMm(Point other) {
        return Math.hypot(xMm - other.xMm, yMm - other.yMm);
    }

    /** The point at a share of the way to another: 0 here, 1 there. */
    public Point towards(Point other, double fraction) {
        return new Point(xMm + (other.xMm - xMm) * fraction, yMm + (other.yMm - yMm) * fraction);
    }

    /** Distance to the stretch between two points, mm. */
    public double distanceMm(Point from, Point to) {
        double lengthMm = from.distanceMm(to);
        if (lengthMm == 0) {
            return distanceMm(from);
        }
        double along = ((xMm - from.xMm) * (to.xMm - from.xMm) + (yMm - from.yMm) * (to.yMm - from.yMm))
                / (lengthMm * lengthMm);
        return distanceMm(from.towards(to, Math.max(0, Math.min(1, along))));
    }
}
