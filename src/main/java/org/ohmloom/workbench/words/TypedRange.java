package org.ohmloom.workbench.words;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmloom.units.Unit;

/**
 * A range as a person types it, as {@code 0 to 10 bar}.
 *
 * @param lowest  lowest value
 * @param highest highest value
 * @param unit    its unit, if typed
 */
public record TypedRange(double lowest, double highest, Optional<String> unit) {
    private static final Words WORDS = Words.of("typed");

    private static final Pattern RANGE = Pattern.compile("(-?[0-9.,]+)\\s*(?:to|–)\\s*(-?[0-9.,]+)\\s*(\\S.*)?");

    /**
     * Reads a range.
     *
     * @throws IllegalArgumentException with one line for the person when it is none
     */
    public static TypedRange parse(String typed) {
        Matcher range = RANGE.matcher(typed.strip());
        if (!range.matches()) {
            throw new IllegalArgumentException(WORDS.get("typed-range.a-range-is-needed"));
        }
        return new TypedRange(
                TypedNumbers.needed(range.group(1), Unit.FRACTION, WORDS.get("typed-range.the-lowest-value")),
                TypedNumbers.needed(range.group(2), Unit.FRACTION, WORDS.get("typed-range.the-highest-value")),
                Optional.ofNullable(range.group(3)).map(String::strip));
    }
}
