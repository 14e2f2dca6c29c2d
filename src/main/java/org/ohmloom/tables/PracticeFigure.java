package org.ohmloom.tables;

import java.util.Set;
import org.ohmloom.words.Refusals;

/**
 * A figure of how harnesses are made.
 *
 * @param item  its name, as in "connector-depth"
 * @param words what it is, for people
 * @param unit  mm, m, kg/m3 or 1
 * @param value the figure in that unit
 */
public record PracticeFigure(String item, String words, String unit, CitedValue value) {

    private static final Set<String> UNITS = Set.of("mm", "m", "kg/m3", "1");

    /** Reads a row with the columns item, value, unit and words. */
    static PracticeFigure read(RowReader row) {
        String item = row.text("item");
        String unit = row.text("unit");
        if (!UNITS.contains(unit)) {
            throw row.unfit("unit", Refusals.text("'%s' is not a unit for this column; write mm, m, kg/m3 or 1", unit));
        }
        double value = row.plainNumber("value");
        if (value < 0) {
            throw row.unfit("value", Refusals.text("the figure is less than 0; write 0 or more"));
        }
        return new PracticeFigure(item, row.text("words"), unit, new CitedValue(value, row.citation(item, "value")));
    }
}
