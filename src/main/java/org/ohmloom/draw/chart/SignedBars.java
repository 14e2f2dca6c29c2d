package org.ohmloom.draw.chart;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.words.Text;

/**
 * Bars to both sides of zero with their numbers: who adds how much to an offset, the error budget of a sensor, the currents
 * round a loop. Parts, rests, sums and tolerances differ in fill and outline, not in colour alone.
 *
 * @param title    what it shows
 * @param subtitle under which conditions; may be empty
 * @param quantity what is measured, as {@code Offset}
 * @param unit     unit of all its values, as {@code mV}
 * @param second   name of the second values; empty when no row has one
 * @param allowed  most the sum may be, to either side
 * @param ring     whether the rows follow one another round a loop, the last one joined to the first
 * @param rows     rows from the top
 */
public record SignedBars(
        Text title,
        Text subtitle,
        Text quantity,
        String unit,
        Text second,
        OptionalDouble allowed,
        boolean ring,
        List<SignedRow> rows) {

    public SignedBars {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a chart of bars needs a row");
        }
    }

    /** The height that shows every row, mm. */
    public double heightMm() {
        return SignedLayout.heightMm(this);
    }

    /** Lays the chart out in a width; its height follows from its rows. */
    public Scene scene(SceneFonts fonts, double widthMm) {
        return new SignedLayout(this, new Pen(fonts), widthMm).scene();
    }
}
