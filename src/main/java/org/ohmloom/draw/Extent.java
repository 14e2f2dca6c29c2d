package org.ohmloom.draw;

import java.util.Collection;
import java.util.Optional;

/**
 * A rectangle along the axes: what a mark covers, or where there is room.
 *
 * @param leftMm   left side, mm
 * @param topMm    upper side, mm
 * @param rightMm  right side, mm, not left of the left one
 * @param bottomMm lower side, mm, not above the upper one
 */
public record Extent(double leftMm, double topMm, double rightMm, double bottomMm) {

    /** The rectangle at a corner with a width and a height. */
    public static Extent at(double leftMm, double topMm, double widthMm, double heightMm) {
        return new Extent(leftMm, topMm, leftMm + widthMm, topMm + heightMm);
    }

    /** The smallest rectangle around points; at least one is needed. */
    public static Extent around(Collection<Point> points) {
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (Point point : points) {
            left = Math.min(left, point.xMm());
            top = Math.min(top, point.yMm());
            right = Math.max(right, point.xMm());
            bottom = Math.max(bottom, point.yMm());
        }
        return new Extent(left, top, right, bottom);
    }

    /** The smallest rectangle around rectangles, if there are any. */
    public static Optional<Extent> union(Collection<Extent> extents) {
        return extents.stream().reduce(Extent::with);
    }

    /** Width, mm. */
    public double widthMm() {
        return rightMm - leftMm;
    }

    /** Height, mm. */
    public double heightMm() {
        return bottomMm - topMm;
    }

    /** Middle. */
    public Point centre() {
        return new Point((leftMm + rightMm) / 2, (topMm + bottomMm) / 2);
    }

    /** The smallest rectangle around this and another. */
    public Extent with(Extent other) {
        return new Extent(
                Math.min(leftMm, other.leftMm),
                Math.min(topMm, other.topMm),
                Math.max(rightMm, other.rightMm),
                Math.max(bottomMm, other.bottomMm));
    }

    /** This rectangle moved. */
    public Extent moved(double dxMm, double dyMm) {
        return new Extent(leftMm + dxMm, topMm + dyMm, rightMm + dxMm, bottomMm + dyMm);
    }

    /** This rectangle larger by a margin on every side; smaller for a negative one. */
    public Extent grown(double marginMm) {
        return new Extent(leftMm - marginMm, topMm - marginMm, rightMm + marginMm, bottomMm + marginMm);
    }

    /** Whether a point lies in it or on its sides. */
    public boolean contains(Point point) {
        return point.xMm() >= leftMm && point.xMm() <= rightMm && point.yMm() >= topMm && point.yMm() <= bottomMm;
    }

    /** Whether another rectangle lies wholly in it. */
    public boolean contains(Extent other) {
        return other.leftMm >= leftMm && other.rightMm <= rightMm && other.topMm >= topMm && other.bottomMm <= bottomMm;
    }

    /** Whether the two share more than their sides. */
    public boolean overlaps(Extent other) {
        return leftMm < other.rightMm && other.leftMm < rightMm && topMm < other.bottomMm && other.topMm < bottomMm;
    }
}
