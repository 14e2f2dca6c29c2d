package org.ohmloom.draw;

/**
 * A step of the scale by which numbers are shown, the coolest first: told by brightness, which every eye sees, by hue, and by
 * the width of a wire.
 */
public enum HeatStep {
    FIRST(Ink.HEAT_FIRST, 0.6),
    SECOND(Ink.HEAT_SECOND, 0.8),
    THIRD(Ink.HEAT_THIRD, 1),
    FOURTH(Ink.HEAT_FOURTH, 1.2),
    FIFTH(Ink.HEAT_FIFTH, 1.4);

    private final Ink ink;
    private final double widthRatio;

    HeatStep(Ink ink, double widthRatio) {
        this.ink = ink;
        this.widthRatio = widthRatio;
    }

    /** Its colour. */
    public Ink ink() {
        return ink;
    }

    /** Width of a wire of this step in widths of a usual one. */
    public double widthRatio() {
        return widthRatio;
    }
}
