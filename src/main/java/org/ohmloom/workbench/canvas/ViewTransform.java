package org.ohmloom.workbench.canvas;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/**
 * Where a scene lies on a component.
 *
 * @param scale pixels for a millimetre, more than 0
 * @param xPx   where the scene's left side lies, px
 * @param yPx   where its upper side lies, px
 */
public record ViewTransform(double scale, double xPx, double yPx) {

    /** The smallest and the largest scale, pixels for a millimetre. */
    static final double SMALLEST = 0.2;

    static final double LARGEST = 80;

    /** The largest scale a part is fitted at: letters of a few millimetres are large enough then, whatever room is left. */
    static final double LARGEST_FITTED = 6;

    public ViewTransform {
        scale = Math.max(SMALLEST, Math.min(LARGEST, scale));
    }

    /** The transform that shows a part of a scene as large as fits, in the middle, with a margin around, px. */
    static ViewTransform fitting(Extent part, double widthPx, double heightPx, double marginPx) {
        double room = Math.max(1, widthPx - 2 * marginPx);
        double rise = Math.max(1, heightPx - 2 * marginPx);
        double scale = Math.min(room / Math.max(1, part.widthMm()), rise / Math.max(1, part.heightMm()));
        return new ViewTransform(Math.min(LARGEST_FITTED, scale), 0, 0).centredOn(part.centre(), widthPx, heightPx);
    }

    /** The same scale with a point in the middle. */
    ViewTransform centredOn(Point centre, double widthPx, double heightPx) {
        return new ViewTransform(scale, widthPx / 2 - centre.xMm() * scale, heightPx / 2 - centre.yMm() * scale);
    }

    /** Larger or smaller by a factor; what lies under a pixel stays under it. */
    ViewTransform zoomed(double factor, double atXPx, double atYPx) {
        double changed = Math.max(SMALLEST, Math.min(LARGEST, scale * factor));
        double ratio = changed / scale;
        return new ViewTransform(changed, atXPx - (atXPx - xPx) * ratio, atYPx - (atYPx - yPx) * ratio);
    }

    /** Moved. */
    ViewTransform moved(double dxPx, double dyPx) {
        return new ViewTransform(scale, xPx + dxPx, yPx + dyPx);
    }

    /** The point of the scene under a pixel. */
    public Point toScene(double px, double py) {
        return new Point((px - xPx) / scale, (py - yPx) / scale);
    }

    /** The pixel of a point of the scene. */
    public Point2D toScreen(Point point) {
        return new Point2D.Double(point.xMm() * scale + xPx, point.yMm() * scale + yPx);
    }

    /** The part of the scene a component shows. */
    Extent seen(double widthPx, double heightPx) {
        Point corner = toScene(0, 0);
        return Extent.at(corner.xMm(), corner.yMm(), widthPx / scale, heightPx / scale);
    }

    /** The transform for painting. */
    public AffineTransform affine() {
        return new AffineTransform(scale, 0, 0, scale, xPx, yPx);
    }
}
