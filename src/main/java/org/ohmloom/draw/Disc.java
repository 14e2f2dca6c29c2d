package org.ohmloom.draw;

/**
 * A circle.
 *
 * @param centre   middle
 * @param radiusMm radius, mm, more than 0
 * @param fill     how it is filled and outlined
 */
public record Disc(Point centre, double radiusMm, Fill fill) implements Mark {

    @Override
    public Extent bounds() {
        double reachMm = radiusMm + fill.reachMm();
        return Extent.at(centre.xMm() - reachMm, centre.yMm() - reachMm, 2 * reachMm, 2 * reachMm);
    }

    @Override
    public boolean hits(Point point, double toleranceMm) {
        double distanceMm = point.distanceMm(centre);
        boolean outside = distanceMm > radiusMm + fill.reachMm() + toleranceMm;
        boolean hollow = fill.inside().isEmpty() && distanceMm < radiusMm - fill.reachMm() - toleranceMm;
        return !outside && !hollow;
    }

    @Override
    public Disc placed(Placement placement) {
        return new Disc(placement.of(centre), placement.length(radiusMm), fill.placed(placement));
    }

    @Override
    public String dump() {
        return "disc " + Dump.point(centre) + " radius " + Dump.mm(radiusMm) + fill.dump();
    }
}
