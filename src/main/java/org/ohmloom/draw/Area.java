package org.ohmloom.draw;

import java.util.List;

/**
 * A closed polygon.
 *
 * @param points at least three corners in order
 * @param fill   how it is filled and outlined
 */
public record Area(List<Point> points, Fill fill) implements Mark {

    public Area {
        points = List.copyOf(points);
        if (points.size() < 3) {
            throw new IllegalArgumentException("an area needs three corners, had " + points);
        }
    }

    @Override
    public Extent bounds() {
        return Extent.around(points).grown(fill.reachMm());
    }

    @Override
    public boolean hits(Point point, double toleranceMm) {
        double reachMm = fill.reachMm() + toleranceMm;
        Point last = points.get(points.size() - 1);
        boolean within = false;
        for (Point next : points) {
            if (point.distanceMm(last, next) <= reachMm) {
                return true;
            }
            boolean crosses = (last.yMm() > point.yMm()) != (next.yMm() > point.yMm())
                    && point.xMm()
                            < last.xMm()
                                    + (next.xMm() - last.xMm())
                                            * (point.yMm() - last.yMm())
                                            / (next.yMm() - last.yMm());
            within ^= crosses;
            last = next;
        }
        return within && fill.inside().isPresent();
    }

    @Override
    public Area placed(Placement placement) {
        return new Area(placement.of(points), fill.placed(placement));
    }

    @Override
    public String dump() {
        return "area " + Dump.points(points) + fill.dump();
    }
}
