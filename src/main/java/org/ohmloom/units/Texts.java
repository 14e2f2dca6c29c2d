package org.ohmloom.units;

import java.util.regex.Pattern;

/** Text as people type it, made fit for reading and for one-line messages. */
public final class Texts {
    private static final int LONGEST_QUOTE = 40;
    private static final Pattern WHITE_SPACE = Pattern.compile("[\\s\\p{Z}\\p{Cc}]+");

    private Texts() {}

    /**
     * What arrived, between single quotes, on one line and not longer than 40 characters.
     *
     * <p>Line breaks and other control characters become one space; a longer text is cut and ends with "...".
     */
    public static String quoted(String text) {
        String line = WHITE_SPACE.matcher(text).replaceAll(" ");
        if (line.codePointCount(0, line.length()) <= LONGEST_QUOTE) {
            return "'" + line + "'";
        }
        return "'" + line.substring(0, line.offsetByCodePoints(0, LONGEST_QUOTE)) + "...'";
    }

    /**
     * The text with every kind of space (no-break, thin) as one plain space, none at the ends, and one character for each
     * sign: hyphen-minus for the mathematical minus, Greek capital omega for the ohm sign, micro sign for Greek mu.
     */
    static String plain(String text) {
        return WHITE_SPACE
                .matcher(text)
                .replaceAll(" ")
                .strip()
                .replace('\u2212', '-')
                .replace('\u2126', '\u03a9')
                .replace('\u03bc', '\u00b5');
    }
}
