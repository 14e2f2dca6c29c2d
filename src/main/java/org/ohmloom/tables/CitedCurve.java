package org.ohmloom.tables;

import static org.ohmloom.units.Require.that;

import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.ohmloom.units.Formats;

/**
 * Values of a table against one number, with straight lines between its rows and the outer rows beyond them.
 *
 * @param name        what the curve is, for citations, as in "lead-acid-agm, pulse"
 * @param unit        unit of the number it goes by, as people write it
 * @param logarithmic whether the straight lines go over the logarithm of that number
 * @param rows        value at each listed number
 */
public record CitedCurve(String name, String unit, boolean logarithmic, NavigableMap<Double, CitedValue> rows) {

    /** Keeps an unmodifiable copy; refuses a curve without rows. */
    public CitedCurve {
        that(!rows.isEmpty(), "the curve %s has no rows", name);
        rows = Collections.unmodifiableNavigableMap(new TreeMap<>(rows));
    }

    /** The value at a number, with the rows it comes from. */
    public CitedValue at(double number) {
        Map.Entry<Double, CitedValue> below = rows.floorEntry(number);
        Map.Entry<Double, CitedValue> above = rows.ceilingEntry(number);
        if (below == null || above == null) {
            CitedValue outer = (below == null ? above : below).getValue();
            String side = below == null ? "below" : "above";
            return new CitedValue(
                    outer.value(), outer.citation().withRow(outer.citation().row() + ", " + side + " it as at it"));
        }
        if (below.getKey().equals(above.getKey())) {
            return below.getValue();
        }
        double share = (scale(number) - scale(below.getKey())) / (scale(above.getKey()) - scale(below.getKey()));
        double value = below.getValue().value()
                + share * (above.getValue().value() - below.getValue().value());
        return new CitedValue(value, between(number, below, above));
    }

    private Citation between(double number, Map.Entry<Double, CitedValue> below, Map.Entry<Double, CitedValue> above) {
        Status weaker = below.getValue()
                .citation()
                .status()
                .weaker(above.getValue().citation().status());
        return below.getValue()
                .citation()
                .withRow(String.format(
                        Locale.ROOT,
                        "%s, %s %s between %s and %s",
                        name,
                        Formats.number(number),
                        unit,
                        Formats.number(below.getKey()),
                        Formats.number(above.getKey())))
                .noBetterThan(weaker)
                .noBetterThan(Status.COMPUTED);
    }

    private double scale(double number) {
        return logarithmic ? Math.log(number) : number;
    }
}
