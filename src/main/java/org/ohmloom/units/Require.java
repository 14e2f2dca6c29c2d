package org.ohmloom.units;

import org.ohmloom.words.Refusals;
import org.ohmloom.words.UnfitException;

/**
 * Checks for constructors that refuse the impossible; each says what was wrong and what arrived, and returns its value. What a value
 * is called is a template too, filled with what stands behind it: {@code positive(ohms, "resistance of strap %s", id)}.
 *
 * <p>Example: {@code this.lengthMetres = Require.positive(lengthMetres, "length in m");}
 */
public final class Require {
    private Require() {}

    /**
     * Refuses when the condition does not hold.
     *
     * @param template as {@link Refusals#text} takes it
     * @throws IllegalArgumentException with the filled template
     */
    public static void that(boolean holds, String template, Object... arguments) {
        if (!holds) {
            throw new UnfitException(template, arguments);
        }
    }

    /** Returns the value when it is neither infinite nor NaN. */
    public static double finite(double value, String name, Object... of) {
        if (!Double.isFinite(value)) {
            throw new UnfitException("%s must be a finite number, was %s", Refusals.text(name, of), value);
        }
        return value;
    }

    /** Returns the value when it is finite and greater than zero. */
    public static double positive(double value, String name, Object... of) {
        if (!(Double.isFinite(value) && value > 0)) {
            throw new UnfitException("%s must be greater than 0, was %s", Refusals.text(name, of), value);
        }
        return value;
    }

    /** Returns the value when it is greater than zero. */
    public static int positive(int value, String name, Object... of) {
        if (value <= 0) {
            throw new UnfitException("%s must be greater than 0, was %s", Refusals.text(name, of), value);
        }
        return value;
    }

    /** Returns the value when it is finite and zero or more. */
    public static double notNegative(double value, String name, Object... of) {
        if (!(Double.isFinite(value) && value >= 0)) {
            throw new UnfitException("%s must be 0 or more, was %s", Refusals.text(name, of), value);
        }
        return value;
    }

    /** Returns the value when it is zero or more. */
    public static int notNegative(int value, String name, Object... of) {
        if (value < 0) {
            throw new UnfitException("%s must be 0 or more, was %s", Refusals.text(name, of), value);
        }
        return value;
    }

    /** Returns the value when it lies in the closed interval from low to high. */
    public static double within(double value, double low, double high, String name, Object... of) {
        if (!(value >= low && value <= high)) {
            throw new UnfitException("%s must be from %s to %s, was %s", Refusals.text(name, of), low, high, value);
        }
        return value;
    }

    /** Returns the value when it lies in the closed interval from low to high. */
    public static int within(int value, int low, int high, String name, Object... of) {
        if (!(value >= low && value <= high)) {
            throw new UnfitException("%s must be from %s to %s, was %s", Refusals.text(name, of), low, high, value);
        }
        return value;
    }

    /** Returns the text, unchanged, when it holds more than white space. */
    public static String notBlank(String text, String name, Object... of) {
        if (text.isBlank()) {
            throw new UnfitException("%s must not be blank, was %s", Refusals.text(name, of), Texts.quoted(text));
        }
        return text;
    }
}
