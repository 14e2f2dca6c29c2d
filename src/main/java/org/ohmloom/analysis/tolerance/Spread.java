package org.ohmloom.analysis.tolerance;

import static org.ohmloom.units.Require.finite;
import static org.ohmloom.units.Require.that;

import java.util.Locale;

/**
 * How far something spreads about the value it is entered with.
 *
 * @param kind      what spreads
 * @param shape     how values lie between the ends
 * @param lowUnits  the low end against the entered value, in the unit of the kind: % or K
 * @param highUnits the high end, not below the low one
 * @param source    where it comes from
 */
public record Spread(SpreadKind kind, SpreadShape shape, double lowUnits, double highUnits, String source) {

    /** A resistance, current or voltage keeps at least this much of itself, %. */
    static final double LEAST_PERCENT = -90, MOST_PERCENT = 900;

    private static final double MOST_KELVIN = 100;

    public Spread {
        finite(lowUnits, "low end of a spread");
        finite(highUnits, "high end of a spread");
        double least = kind == SpreadKind.AMBIENT ? -MOST_KELVIN : LEAST_PERCENT;
        double most = kind == SpreadKind.AMBIENT ? MOST_KELVIN : MOST_PERCENT;
        that(
                least <= lowUnits && lowUnits <= highUnits && highUnits <= most,
                "the spread of %s must go from a low to a high end within %s to %s %s, was %s..%s",
                kind.key(),
                Math.round(least),
                Math.round(most),
                kind.unit(),
                plain(lowUnits),
                plain(highUnits));
    }

    /** Whether it does not spread. */
    public boolean isNone() {
        return lowUnits == highUnits && lowUnits == 0;
    }

    /** The value that a share of all lie below: a fraction of the entered value, or K. */
    double at(double share) {
        double value = kind.perUnit() * shape.value(lowUnits, highUnits, share);
        return kind == SpreadKind.AMBIENT ? value : Math.max(kind.perUnit() * LEAST_PERCENT, value);
    }

    /** The mean of all values: a fraction of the entered value, or K. */
    double mean() {
        return kind.perUnit() * shape.mean(lowUnits, highUnits);
    }

    /** In words: "-10 to 10 %, even". */
    public String words() {
        return plain(lowUnits) + " to " + plain(highUnits) + " " + kind.unit() + ", " + shape.key();
    }

    /** As a person types it: "-10..10", "-30..100,peaked". */
    public String typed() {
        String ends = plain(lowUnits) + ".." + plain(highUnits);
        return isNone() ? "none" : shape == SpreadShape.EVEN ? ends : ends + "," + shape.key();
    }

    /** A number as a person writes it. */
    public static String plain(double number) {
        String text = String.format(Locale.ROOT, "%.1f", number);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2).replaceFirst("^-0$", "0") : text;
    }
}
