package org.ohmloom.draw.chart;

import java.util.List;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/**
 * An axis: its unit, its ends and its marks.
 *
 * @param title       what is measured
 * @param unit        unit of its numbers
 * @param from        its lower end, canonical unit
 * @param to          its upper end, canonical unit, more than the lower one
 * @param logarithmic whether equal distances are equal ratios; its ends are above 0 then
 * @param ticks       its marks, upwards
 */
record Axis(Text title, Unit unit, double from, double to, boolean logarithmic, List<Tick> ticks) {

    Axis {
        ticks = List.copyOf(ticks);
        if (!(to > from) || (logarithmic && !(from > 0))) {
            throw new IllegalArgumentException("an axis runs upwards, had " + from + " to " + to);
        }
    }

    /** Where a value stands: 0 at the lower end, 1 at the upper one, outside of that beyond them. */
    double fraction(double value) {
        if (logarithmic) {
            return value > 0 ? Math.log(value / from) / Math.log(to / from) : Double.NEGATIVE_INFINITY;
        }
        return (value - from) / (to - from);
    }

    /** The title with its unit: "Voltage, V". */
    Text heading() {
        return title.isEmpty() || unit.symbol().isEmpty()
                ? title
                : Text.joined(", ", List.of(title, Text.of(unit.symbol())));
    }

    /** Count of steps between numbers. */
    int steps() {
        return ticks.size() - 1;
    }
}
