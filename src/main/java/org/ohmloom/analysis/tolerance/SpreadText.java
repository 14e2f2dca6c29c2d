package org.ohmloom.analysis.tolerance;

import java.util.Arrays;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ohmloom.words.UnfitException;

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
            throw new UnfitException(
                    "'%s' is no spread; write for example load=-10..10, load:FAN1=0..20,peaked or ambient=none", text);
        }
        SpreadKind kind = SpreadKind.of(form.group(1))
                .orElseThrow(() -> new UnfitException(
                        "'%s' does not spread; write one of %s",
                        form.group(1), listed(SpreadKind.values(), SpreadKind::key)));
        if (kind == SpreadKind.AMBIENT && form.group(2) != null) {
            throw new UnfitException(
                    "air is warmer or cooler everywhere; write ambient without %s",
                    form.group(2).substring(1));
        }
        if (form.group(3) == null) {
            return new Spread(kind, SpreadShape.EVEN, 0, 0, source);
        }
        SpreadShape shape = form.group(5) == null
                ? SpreadShape.EVEN
                : SpreadShape.of(form.group(5))
                        .orElseThrow(() -> new UnfitException(
                                "'%s' is no shape of a spread; write one of %s",
                                form.group(5), listed(SpreadShape.values(), SpreadShape::key)));
        return new Spread(kind, shape, Double.parseDouble(form.group(3)), Double.parseDouble(form.group(4)), source);
    }

    private static <T> String listed(T[] all, Function<T, String> key) {
        return Arrays.stream(all).map(key).collect(Collectors.joining(", "));
    }
}
