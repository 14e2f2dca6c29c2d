package org.ohmloom.draw;

import java.util.List;

/**
 * A line of text.
 *
 * @param text            what it says
 * @param at              position of its anchor on the base line
 * @param heightMm        height of its capital letters (h of ISO 3098), mm, more than 0
 * @param widthMm         measured width, mm
 * @param anchor          which point of it lies at the position
 * @param rotationDegrees turned about its position, clockwise, degrees
 * @param weight          weight
 * @param ink             colour
 */
public record Text(
        String text,
        Point at,
        double heightMm,
        double widthMm,
        Anchor anchor,
        double rotationDegrees,
        Weight weight,
        Ink ink)
        implements Mark {

    /** How far letters such as g reach below the base line, as a share of the capitals' height. */
    static final double DESCENT_RATIO = 0.31;

    /** How far letters such as b reach, accents on capitals left out, as a share of the capitals' height. */
    static final double ASCENT_RATIO = 1.06;

    /** This text saying something else, its width in proportion to its letters. */
    Text saying(String changed) {
        double wide = text.isEmpty() ? widthMm : widthMm * changed.length() / text.length();
        return new Text(changed, at, heightMm, wide, anchor, rotationDegrees, weight, ink);
    }

    @Override
    public Extent bounds() {
        return Extent.around(corners());
    }

    private List<Point> corners() {
        double left = -widthMm * anchor.fraction();
        double top = -heightMm * ASCENT_RATIO;
        double bottom = heightMm * DESCENT_RATIO;
        return List.of(
                turned(left, top), turned(left + widthMm, top), turned(left + widthMm, bottom), turned(left, bottom));
    }

    private Point turned(double dxMm, double dyMm) {
        if (rotationDegrees == 0) {
            return at.plus(dxMm, dyMm);
        }
        double angle = Math.toRadians(rotationDegrees);
        return at.plus(
                dxMm * Math.cos(angle) - dyMm * Math.sin(angle), dxMm * Math.sin(angle) + dyMm * Math.cos(angle));
    }

    @Override
    public boolean hits(Point point, double toleranceMm) {
        return new Area(corners(), Fill.of(ink)).hits(point, toleranceMm);
    }

    @Override
    public Text placed(Placement placement) {
        return new Text(
                text,
                placement.of(at),
                placement.length(heightMm),
                placement.length(widthMm),
                anchor,
                rotationDegrees,
                weight,
                ink);
    }

    @Override
    public String dump() {
        return "text \"" + text + "\" " + Dump.point(at) + " height " + Dump.mm(heightMm) + " " + Dump.word(anchor)
                + (rotationDegrees == 0 ? "" : " turned " + Dump.mm(rotationDegrees))
                + (weight == Weight.BOLD ? " bold" : "") + " " + Dump.word(ink);
    }
}
