package org.ohmloom.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Pattern;

/** Digits of a value in another unit that lead back to exactly the same value. */
final class ShownDigits {
    private static final int MOST_DIGITS = 17;
    private static final int ULPS = 4;
    private static final Pattern BARE =
            Pattern.compile("\\s*[+-]?(?:[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+|[1-4]\\s?/\\s?0)\\s*");

    private ShownDigits() {}

    /** Whether a text is a number, or a gauge such as 2/0, without a unit. */
    static boolean isBare(String text) {
        return BARE.matcher(text).matches();
    }

    /** The fewest digits in a unit that read back as exactly this canonical value; empty where no number of that unit does. */
    static Optional<String> of(double canonical, Unit shown) {
        double near = shown.fromCanonical(canonical);
        for (int digits = 1; digits <= MOST_DIGITS; digits++) {
            BigDecimal rounded = BigDecimal.valueOf(near).round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (shown.toCanonical(rounded.doubleValue()) == canonical) {
                return Optional.of(NumberText.exact(rounded.doubleValue()));
            }
        }
        double low = near;
        double high = near;
        for (int ulps = 0; ulps < ULPS; ulps++) {
            low = Math.nextDown(low);
            high = Math.nextUp(high);
            if (shown.toCanonical(low) == canonical) {
                return Optional.of(NumberText.exact(low));
            }
            if (shown.toCanonical(high) == canonical) {
                return Optional.of(NumberText.exact(high));
            }
        }
        return Optional.empty();
    }
}
