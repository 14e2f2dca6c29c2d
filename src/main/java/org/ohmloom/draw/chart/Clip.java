package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/** Cuts lines to a rectangle, after Liang and Barsky (1984): a stretch is kept between the sides it enters and leaves. */
final class Clip {

    private Clip() {}

    /** The parts of a line that lie in a rectangle, in order. */
    static List<List<Point>> line(List<Point> points, Extent extent) {
        List<List<Point>> parts = new ArrayList<>();
        List<Point> part = new ArrayList<>();
        for (int k = 1; k < points.size(); k++) {
            Optional<List<Point>> kept = segment(points.get(k - 1), points.get(k), extent);
            if (kept.isEmpty()) {
                finish(parts, part);
                part = new ArrayList<>();
                continue;
            }
            Point from = kept.get().get(0);
            if (part.isEmpty() || part.get(part.size() - 1).distanceMm(from) > 1e-9) {
                finish(parts, part);
                part = new ArrayList<>(List.of(from));
            }
            part.add(kept.get().get(1));
        }
        finish(parts, part);
        return parts;
    }

    private static void finish(List<List<Point>> parts, List<Point> part) {
        if (part.size() > 1) {
            parts.add(part);
        }
    }

    /** The two ends of what lies of a stretch in a rectangle, if anything does. */
    static Optional<List<Point>> segment(Point from, Point to, Extent extent) {
        double dx = to.xMm() - from.xMm();
        double dy = to.yMm() - from.yMm();
        double[] against = {-dx, dx, -dy, dy};
        double[] room = {
            from.xMm() - extent.leftMm(), extent.rightMm() - from.xMm(),
            from.yMm() - extent.topMm(), extent.bottomMm() - from.yMm()
        };
        double enters = 0;
        double leaves = 1;
        for (int side = 0; side < 4; side++) {
            if (against[side] == 0) {
                if (room[side] < 0) {
                    return Optional.empty();
                }
                continue;
            }
            double share = room[side] / against[side];
            if (against[side] < 0) {
                enters = Math.max(enters, share);
            } else {
                leaves = Math.min(leaves, share);
            }
        }
        return enters > leaves
                ? Optional.empty()
                : Optional.of(List.of(from.towards(to, enters), from.towards(to, leaves)));
    }
}
