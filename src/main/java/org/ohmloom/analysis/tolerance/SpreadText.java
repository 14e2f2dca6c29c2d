package org.ohmloom.analysis.tolerance;

import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A spread as a person writes it: KIND=LOW..HIGH, KIND:ID=LOW..HIGH,SHAPE or KIND=none. */
final class SpreadText {

    private static final String NUMBER = "[-+]?[0-9]+(?:\\.[0-9]+)?";
    private static final Pattern FORM =
            Pattern.compile("([a-z]+)(:[^=]+)?=(?:none|(" + NUMBER + ")\\.\\.(" + NUMBER + ")(?:,([a-z]+))?)");

    private SpreadText() {}

    /** The key of {@link Spreads}. */
    static String key(String text) {
        return text.contains("=") ? text.substring(0, text.indexOf('=')) : text;
    }

    /**
     * Reads a spread.
     *
     * @throws IllegalArgumentException with what is wrong and what would be right
     */
    static Spread of(String text, String source) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            throw new IllegalArgumentException("'" + text
                    + "' is no spread; write for example load=-10..10, load:FAN1=0..20,peaked or ambient=none");
        }
        SpreadKind kind = SpreadKind.of(form.group(1))
                .orElseThrow(() -> new IllegalArgumentException("'" + form.group(1) + "' does not spread; write one of "
                        + Arrays.stream(SpreadKind.values())
                                .map(SpreadKind::key)
                                .collect(Collectors.joining(", "))));
        if (kind == SpreadKind.AMBIENT && form.group(2) != null) {
            throw new IllegalArgumentException("air is warmer or cooler everywhere; write ambient without "
                    + form.group(2).substring(1));
        }
        if (form.group(3) == null) {
            return new Spread(kind, SpreadShape.EVEN, 0, 0, source);
        }
        SpreadShape shape = form.group(5) == null
                ? SpreadShape.EVEN
                : SpreadShape.of(form.group(5))
                        .orElseThrow(() -> new IllegalArgumentException("'" + form.group(5)
                                + "' is no shape of a spread; write one of "
                                + Arrays.stream(SpreadShape.values())
                                        .map(SpreadShape::key)
                                        .collect(Collectors.joining(", "))));
        return new Spread(kind, shape, Double.parseDouble(form.group(3)), Double.parseDouble(form.group(4)), source);
    }
}
