package org.ohmloom.workbench.words;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.units.QuantityParser;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/**
 * Reads numbers a person types into a cell; an empty cell is no number. Every method throws
 * {@link IllegalArgumentException} with one line for the person when the text is not what is needed.
 */
public final class TypedNumbers {
    private static final Words WORDS = Words.of("typed");

    private TypedNumbers() {}

    /** A number in the canonical unit, or nothing for an empty text; a bare number is in the unit. */
    public static OptionalDouble optional(String typed, Unit unit) {
        return typed.isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(QuantityParser.parse(typed, unit).canonical());
    }

    /** A number that must be there. */
    public static double needed(String typed, Unit unit, String what) {
        return optional(typed, unit)
                .orElseThrow(() -> new IllegalArgumentException(WORDS.get("typed-numbers.cannot-be-left-empty", what)));
    }

    /** Yes or no. */
    public static boolean yes(String typed) {
        return switch (WORDS.meant(typed, "yes", "no").strip().toLowerCase(Locale.ROOT)) {
            case "yes", "on", "y", "1" -> true;
            case "no", "off", "n", "0", "" -> false;
            default -> throw new IllegalArgumentException(WORDS.get("typed-numbers.is-neither-yes-nor", typed.strip()));
        };
    }

    /** "yes" or "no", as {@link #yes(String)} reads it. */
    public static String yesOrNo(boolean is) {
        return WORDS.get(is ? "yes" : "no");
    }

    /** "yes", or nothing where it is not so. */
    public static String yesIf(boolean is) {
        return is ? WORDS.get("yes") : "";
    }

    /** A number with all its digits, as it can be typed again. */
    public static String exact(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /** Several edits as one step. */
    public static Edit together(Text label, List<Edit> edits) {
        return edits.size() == 1 ? edits.get(0) : new Compound(label, edits);
    }
}
