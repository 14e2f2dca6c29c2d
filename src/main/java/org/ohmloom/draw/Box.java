package org.ohmloom.draw;

/**
 * A rectangle, its corners rounded if wanted.
 *
 * @param extent   where it lies
 * @param cornerMm radius of its corners, mm, 0 or more
 * @param fill     how it is filled and outlined
 */
public record Box(Extent extent, double cornerMm, Fill fill) implements Mark {

    @Override
    public Extent bounds() {
        return extent.grown(fill.reachMm());
    }

    @Override
    public boolean hits(Point point, double toleranceMm) {
        if (!bounds().grown(toleranceMm).contains(point)) {
            return false;
        }
        Extent inner = extent.grown(-fill.reachMm() - toleranceMm);
        return fill.inside().isPresent() || inner.widthMm() <= 0 || inner.heightMm() <= 0 || !inner.contains(point);
    }

    @Override
    public Box placed(Placement placement) {
        Extent placed = new Extent(
                placement.x(extent.leftMm()),
                placement.y(extent.topMm()),
                placement.x(extent.rightMm()),
                placement.y(extent.bottomMm()));
        return new Box(placed, placement.length(cornerMm), fill.placed(placement));
    }

    @Override
    public String dump() {
        return "box " + Dump.extent(extent) + (cornerMm > 0 ? " corner " + Dump.mm(cornerMm) : "") + fill.dump();
    }
}
