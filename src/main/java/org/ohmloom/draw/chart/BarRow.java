package org.ohmloom.draw.chart;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.words.Text;

/**
 * A row of a bar chart: one thing with one bar for each kind of value.
 *
 * @param label   what it is
 * @param values  its values in the order of the chart's kinds, canonical unit, 0 or more; empty where there is none
 * @param limit   a level its bars are held against, canonical unit
 * @param element id of the element it belongs to, for hit testing
 */
public record BarRow(Text label, List<OptionalDouble> values, OptionalDouble limit, Optional<String> element) {

    public BarRow {
        values = List.copyOf(values);
    }

    /** A row with all its values and no limit. */
    public static BarRow of(Text label, double... values) {
        return new BarRow(
                label,
                Arrays.stream(values).mapToObj(OptionalDouble::of).toList(),
                OptionalDouble.empty(),
                Optional.empty());
    }
}
