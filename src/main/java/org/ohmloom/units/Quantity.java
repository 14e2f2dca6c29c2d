package org.ohmloom.units;

/**
 * A value together with the unit it was typed in or is to be shown in.
 *
 * @param value the number in that unit, finite, and finite in the canonical unit as well
 * @param unit the unit of the value
 */
public record Quantity(double value, Unit unit) {
    private static final int TEXT_DIGITS = 6;

    /** The product of five such numbers, or of their inverses, is still one a double holds. */
    private static final double LARGEST = 1e60;

    /**
     * Checks the value.
     *
     * @throws IllegalArgumentException when the value is not finite, here or in the canonical unit
     */
    public Quantity {
        Require.that(
                Double.isFinite(value) && Double.isFinite(unit.toCanonical(value)),
                "%s must be a finite number of %s, was %s",
                unit.dimension().named(),
                unit.symbol(),
                value);
    }

    /** Whether a number somebody gives is beyond what can be computed with; so is one that is none. */
    public static boolean isTooLarge(double given) {
        return !(Math.abs(given) <= LARGEST);
    }

    /** Whether a number somebody gives is nearer to 0 than what can be computed with, and not 0. */
    public static boolean isTooSmall(double given) {
        return given != 0 && Math.abs(given) < 1 / LARGEST;
    }

    /** The quantity of a value in a unit. */
    public static Quantity of(double value, Unit unit) {
        return new Quantity(value, unit);
    }

    /** The quantity of a value in the canonical unit of a dimension. */
    public static Quantity ofCanonical(double canonical, Dimension dimension) {
        return new Quantity(canonical, dimension.canonicalUnit());
    }

    /** The value in the canonical unit of its dimension. */
    public double canonical() {
        return unit.toCanonical(value);
    }

    /** What is measured. */
    public Dimension dimension() {
        return unit.dimension();
    }

    /**
     * The value in another unit of the same dimension.
     *
     * @throws IllegalArgumentException when the other unit measures something else
     */
    public double in(Unit other) {
        Require.that(
                other.dimension() == dimension(),
                "%s is %s, it has no value in %s",
                text(),
                dimension().named(),
                other.symbol());
        return other == unit ? value : other.fromCanonical(canonical());
    }

    /**
     * Number and symbol, up to six significant digits, decimal point, as "2.5 mm²" or "20 %".
     *
     * <p>{@link QuantityParser} reads it back to within those digits. An exponent ("1.2e-9 F") appears only below 1e-6 and
     * from 1e10 on.
     */
    public String text() {
        return withSymbol(NumberText.significant(value, TEXT_DIGITS));
    }

    /** Number and symbol with every digit that matters, for copying: reads back as exactly this quantity. */
    public String exactText() {
        return withSymbol(NumberText.exact(value));
    }

    private String withSymbol(String digits) {
        return unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol();
    }
}
