package org.ohmloom.tables;

import java.util.Set;
import org.ohmloom.words.Refusals;

/**
 * How far something spreads about the value it is entered with.
 *
 * @param item  what spreads: a kind such as "load", or one element of it as in "load:FAN1"
 * @param shape how values lie between the ends: even, peaked or normal
 * @param low   the low end against the entered value, % or, for air, K
 * @param high  the high end
 */
public record SpreadFigure(String item, String shape, CitedValue low, CitedValue high) {

    private static final Set<String> SHAPES = Set.of("even", "peaked", "normal");

    private static final String KINDS = "(conductor|length|joint|load|source)(:.+)?|ambient";

    /** Reads a row with the columns item, shape, low, high and words. */
    static SpreadFigure read(RowReader row) {
        String item = row.text("item");
        if (!item.matches(KINDS)) {
            throw row.unfit(
                    "item",
                    Refusals.text(
                            "'%s' does not spread; write conductor, length, joint, load or source, alone or with an id as in load:FAN1, or ambient",
                            item));
        }
        String shape = row.text("shape");
        if (!SHAPES.contains(shape)) {
            throw row.unfit("shape", Refusals.text("'%s' is no shape; write even, peaked or normal", shape));
        }
        double low = row.plainNumber("low");
        double high = row.plainNumber("high");
        if (low > high) {
            throw row.unfit("low", Refusals.text("the low end is above the high end; exchange the two"));
        }
        return new SpreadFigure(
                item,
                shape,
                new CitedValue(low, row.citation(item, "low")),
                new CitedValue(high, row.citation(item, "high")));
    }
}
