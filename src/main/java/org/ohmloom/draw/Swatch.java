package org.ohmloom.draw;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
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

    /**
     * A stretch of one colour.
     *
     * @param extent where it lies
     * @param colour its colour
     */
    public record Stripe(Extent extent, Color colour) {}

    /** The base colour with its tracers as stripes along the middle, the way they run along a wire, the lowest first. */
    public List<Stripe> stripes(DrawStyle style) {
        List<String> tracers = colour.tracers();
        List<Stripe> stripes = new ArrayList<>(List.of(new Stripe(extent, shown(colour.base(), style))));
        double high = extent.heightMm() / (tracers.size() * 2 + 1);
        for (int k = 0; k < tracers.size(); k++) {
            double top = extent.topMm() + high * (2 * k + 1);
            stripes.add(
                    new Stripe(Extent.at(extent.leftMm(), top, extent.widthMm(), high), shown(tracers.get(k), style)));
        }
        return stripes;
    }

    private static Color shown(String code, DrawStyle style) {
        Color colour = InsulationColours.of(code);
        return style.mono() ? InsulationColours.grey(colour) : colour;
    }

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
