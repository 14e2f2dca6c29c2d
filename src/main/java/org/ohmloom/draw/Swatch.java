package org.ohmloom.draw;

import org.ohmloom.model.WireColour;

/**
 * A sample of an insulation colour with its tracers. Its code is always written beside it.
 *
 * @param extent where it lies
 * @param colour the insulation colour
 */
public record Swatch(Extent extent, WireColour colour) implements Mark {

    /** Width of the outline, mm. */
    static final double EDGE_MM = 0.13;

    @Override
    public Extent bounds() {
        return extent.grown(EDGE_MM / 2);
    }

    @Override
    public boolean hits(Point point, double toleranceMm) {
        return bounds().grown(toleranceMm).contains(point);
    }

    @Override
    public Swatch placed(Placement placement) {
        return new Swatch(
                Extent.at(
                        placement.x(extent.leftMm()),
                        placement.y(extent.topMm()),
                        placement.length(extent.widthMm()),
                        placement.length(extent.heightMm())),
                colour);
    }

    @Override
    public String dump() {
        return "swatch " + Dump.extent(extent) + " " + colour.text();
    }
}
