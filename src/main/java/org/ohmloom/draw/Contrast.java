package org.ohmloom.draw;

import java.awt.Color;

/**
 * Contrast of two colours after WCAG 2.2: relative luminance from linear sRGB, ratio (lighter + 0.05) / (darker + 0.05),
 * 1 to 21. Lines and symbols want 3 (success criterion 1.4.11), text 4.5 (1.4.3).
 */
public final class Contrast {

    /** Least contrast of lines and symbols. */
    public static final double LINES = 3;

    /** Least contrast of text. */
    public static final double TEXT = 4.5;

    private static final int STEPS = 100;

    private Contrast() {}

    /** The contrast ratio of two opaque colours. */
    public static double ratio(Color one, Color other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    /**
     * The colour itself, or the nearest of its hue, darkened on a light ground and lightened on a dark one, that has the
     * contrast wanted against that ground.
     */
    public static Color reach(Color hue, Color ground, double ratio) {
        Color limit = luminance(ground) > 0.18 ? Color.BLACK : Color.WHITE;
        for (int step = 0; step < STEPS; step++) {
            Color mixed = mix(hue, limit, step / (double) STEPS);
            if (ratio(mixed, ground) >= ratio) {
                return mixed;
            }
        }
        return limit;
    }

    /** A colour between two: the first at 0, the second at 1. */
    static Color mix(Color one, Color other, double fraction) {
        return new Color(
                (int) Math.round(one.getRed() + (other.getRed() - one.getRed()) * fraction),
                (int) Math.round(one.getGreen() + (other.getGreen() - one.getGreen()) * fraction),
                (int) Math.round(one.getBlue() + (other.getBlue() - one.getBlue()) * fraction));
    }

    /** Relative luminance, 0 for black to 1 for white. */
    static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
