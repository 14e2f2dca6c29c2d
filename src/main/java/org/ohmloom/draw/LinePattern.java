package org.ohmloom.draw;

import java.util.Arrays;
import java.util.List;

/**
 * Line types by their use of dashes, after ISO 128-2: lengths in line widths, dash and gap in turn. From memory: dot
 * half a width, gap 3, short dash 6, dash 12, long dash 24 widths.
 */
public enum LinePattern {
    /** Type 01. */
    CONTINUOUS,
    /** Type 02. */
    DASHED(12, 3),
    /** Type 04. */
    LONG_DASH_DOT(24, 3, 0.5, 3),
    /** Type 05. */
    LONG_DASH_DOUBLE_DOT(24, 3, 0.5, 3, 0.5, 3),
    /** Type 07. */
    DOTTED(0.5, 3),
    /** Type 08. */
    LONG_DASH_SHORT_DASH(24, 3, 6, 3),
    /** Type 09. */
    LONG_DASH_DOUBLE_SHORT_DASH(24, 3, 6, 3, 6, 3),
    /** Type 10. */
    DASH_DOT(12, 3, 0.5, 3),
    /** Type 12. */
    DASH_DOUBLE_DOT(12, 3, 0.5, 3, 0.5, 3);

    private final List<Double> widths;

    LinePattern(double... widths) {
        this.widths = Arrays.stream(widths).boxed().toList();
    }

    /** Dash and gap in turn in line widths; empty for a continuous line. */
    public List<Double> widths() {
        return widths;
    }
}
