package org.ohmloom.draw.chart;

import java.util.List;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.LinePattern;

/**
 * How a line of a chart is drawn; no two of the first eight share a pattern.
 *
 * @param ink     colour
 * @param pattern line pattern
 */
record LineLook(Ink ink, LinePattern pattern) {

    private static final List<Ink> INKS = List.of(Ink.CHART_FIRST, Ink.CHART_SECOND, Ink.CHART_THIRD, Ink.CHART_FOURTH);

    private static final List<LinePattern> PATTERNS = List.of(
            LinePattern.CONTINUOUS,
            LinePattern.DASHED,
            LinePattern.DASH_DOT,
            LinePattern.LONG_DASH_SHORT_DASH,
            LinePattern.DASH_DOUBLE_DOT,
            LinePattern.LONG_DASH_DOT,
            LinePattern.LONG_DASH_DOUBLE_DOT,
            LinePattern.DOTTED);

    /** The look of the line with an index, from 0. */
    static LineLook of(int index) {
        return new LineLook(INKS.get(index % INKS.size()), PATTERNS.get(index % PATTERNS.size()));
    }
}
