package org.ohmloom.draw.chart;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.words.Text;

/**
 * A row of a chart of signed bars.
 *
 * @param label   what it is
 * @param kind    how its bar is drawn
 * @param value   its value, in the unit of the chart; not below 0 for a {@link Kind#SPAN}
 * @param second  its value under the chart's second condition, where there is one
 * @param element id of the element it belongs to, for hit testing
 */
public record SignedRow(Text label, Kind kind, double value, OptionalDouble second, Optional<String> element) {

    /** What a bar stands for. */
    public enum Kind {
        /** One part with its sign: a filled bar. */
        PART,
        /** Several parts together: a bar in outline. */
        REST,
        /** A part that may lie on either side of zero: an outline to both sides. */
        SPAN,
        /** A sum: a filled bar in bold under a line. */
        SUM,
        /** A part that lies where it should not: a filled bar with a mark before its name. */
        STRAY
    }

    /** A part without a second value. */
    public static SignedRow of(Kind kind, Text label, double value, Optional<String> element) {
        return new SignedRow(label, kind, value, OptionalDouble.empty(), element);
    }
}
