package org.ohmloom.units;

import java.util.Optional;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/**
 * Reads quantities as builders write them: "2.5 mm2", "2,5 mm²", "10 ft", "4,7 kOhm", "1.2e-3 A", "20 %".
 *
 * <p>One decimal point or comma, no thousands separator, any kind of space around and between, the mathematical minus as
 * well as the hyphen. The same on every machine whatever its language. A bare number is refused, except for a ratio,
 * where it is a fraction, or where the caller says which unit is meant.
 */
public final class QuantityParser {
    private QuantityParser() {}

    /**
     * Reads a quantity that must state its unit.
     *
     * @throws QuantityFormatException with one line for the person who typed it, when the text is not a finite quantity of
     *     the expected dimension
     */
    public static Quantity parse(String text, Dimension expected) {
        return read(text, expected, expected == Dimension.RATIO ? Optional.of(Unit.FRACTION) : Optional.empty());
    }

    /**
     * Reads a quantity of the dimension of a unit; a bare number is in that unit.
     *
     * @throws QuantityFormatException as {@link #parse(String, Dimension)}
     */
    public static Quantity parse(String text, Unit assumedWhenMissing) {
        return read(text, assumedWhenMissing.dimension(), Optional.of(assumedWhenMissing));
    }

    /**
     * Reads a quantity; a bare number is in the unit that is assumed when none is written.
     *
     * @throws QuantityFormatException as {@link #parse(String, Dimension)}
     * @throws IllegalArgumentException when the assumed unit does not measure the expected dimension
     */
    public static Quantity parse(String text, Dimension expected, Unit assumedWhenMissing) {
        Require.that(
                assumedWhenMissing.dimension() == expected,
                "the assumed unit %s does not measure %s",
                assumedWhenMissing,
                expected.named());
        return read(text, expected, Optional.of(assumedWhenMissing));
    }

    private static Quantity read(String text, Dimension expected, Optional<Unit> assumed) {
        Text needed = Refusals.text("%s such as '%s' is needed", expected.named(), expected.example());
        NumberText number = NumberText.read(text, needed);
        Unit unit = number.rest().isEmpty()
                ? assumed.orElseThrow(
                        () -> new QuantityFormatException("%s has no unit; %s", Texts.quoted(text), needed))
                : unit(text, number.rest(), expected, needed);
        double canonical = unit.toCanonical(number.value());
        if (Quantity.isTooLarge(canonical) || Quantity.isTooSmall(canonical)) {
            throw new QuantityFormatException(
                    Quantity.isTooLarge(canonical)
                            ? "%s is too large to compute with; %s"
                            : "%s is too small to compute with; %s",
                    Texts.quoted(text),
                    needed);
        }
        return Quantity.of(number.value(), unit);
    }

    private static Unit unit(String text, String spelling, Dimension expected, Text needed) {
        return Units.find(spelling, expected).orElseThrow(() -> Units.findAnywhere(spelling)
                .map(other -> new QuantityFormatException(
                        "%s is %s; %s", Texts.quoted(text), other.dimension().named(), needed))
                .orElseGet(() -> new QuantityFormatException(
                        "%s has the unknown unit %s; %s", Texts.quoted(text), Texts.quoted(spelling), needed)));
    }
}
