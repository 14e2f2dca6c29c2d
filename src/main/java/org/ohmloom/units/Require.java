package org.ohmloom.units;

import java.util.Locale;

/**
 * Checks for constructors that refuse the impossible; each says what was wrong and what arrived, and returns its value.
 *
 * <p>Example: {@code this.lengthMetres = Require.positive(lengthMetres, "length in m");}
 */
public final class Require {
    private Require() {}

    /**
     * Refuses when the condition does not hold.
     *
     * @param template a format of {@link String#format}; taken as it stands when there are no arguments
     * @throws IllegalArgumentException with the filled template
     */
    public static void that(boolean holds, String template, Object... arguments) {
        if (!holds) {
            throw new IllegalArgumentException(
                    arguments.length == 0 ? template : String.format(Locale.ROOT, template, arguments));
        }
    }

    /** Returns the value when it is neither infinite nor NaN. */
    public static double finite(double value, String name) {
        that(Double.isFinite(value), "%s must be a finite number, was %s", name, value);
        return value;
    }

    /** Returns the value when it is finite and greater than zero. */
    public static double positive(double value, String name) {
        that(Double.isFinite(value) && value > 0, "%s must be greater than 0, was %s", name, value);
        return value;
    }

    /** Returns the value when it is greater than zero. */
    public static int positive(int value, String name) {
        that(value > 0, "%s must be greater than 0, was %s", name, value);
        return value;
    }

    /** Returns the value when it is finite and zero or more. */
    public static double notNegative(double value, String name) {
        that(Double.isFinite(value) && value >= 0, "%s must be 0 or more, was %s", name, value);
        return value;
    }

    /** Returns the value when it is zero or more. */
    public static int notNegative(int value, String name) {
        that(value >= 0, "%s must be 0 or more, was %s", name, value);
        return value;
    }

    /** Returns the value when it lies in the closed interval from low to high. */
    public static double within(double value, double low, double high, String name) {
        that(value >= low && value <= high, "%s must be from %s to %s, was %s", name, low, high, value);
        return value;
    }

    /** Returns the value when it lies in the closed interval from low to high. */
    public static int within(int value, int low, int high, String name) {
        that(value >= low && value <= high, "%s must be from %s to %s, was %s", name, low, high, value);
        return value;
    }

    /** Returns the text, unchanged, when it holds more than white space. */
    public static String notBlank(String text, String name) {
        that(!text.isBlank(), "%s must not be blank, was %s", name, Texts.quoted(text));
        return text;
    }
}
