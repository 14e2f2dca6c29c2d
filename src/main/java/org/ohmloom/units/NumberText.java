package org.ohmloom.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmloom.words.Text;

/**
 * The number at the beginning of a text and what follows it.
 *
 * @param value the number, finite
 * @param rest what follows the number, without any space; may be empty
 */
record NumberText(double value, String rest) {
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+)(?:[eE][+-]?[0-9]+)?");
    private static final Pattern MORE_DIGITS = Pattern.compile("[.,]?[0-9].*|[.,].*");
    private static final Pattern COMMA_AS_THOUSANDS = Pattern.compile("[+-]?[1-9][0-9]{0,2},[0-9]{3}");
    private static final MathContext CLEANED = new MathContext(12, RoundingMode.HALF_UP);
    private static final int LARGEST_PLAIN_EXPONENT = 9;
    private static final int SMALLEST_PLAIN_EXPONENT = -6;

    /**
     * Reads a number with a decimal point or a decimal comma from the beginning of a text.
     *
     * @param typed the whole text as it arrived, for the message
     * @param needed the end of the message: what would be right, as "a length such as '1.5 m' is needed"
     * @throws QuantityFormatException when there is no number, when it may be read in two ways (a second point or comma,
     *     or one comma before exactly three digits, as in "1,234"), or when it is too large or too small for a double
     */
    static NumberText read(String typed, Text needed) {
        String text = Texts.plain(typed);
        if (text.isEmpty()) {
            throw new QuantityFormatException("nothing was entered; %s", needed);
        }
        Matcher number = NUMBER.matcher(text);
        if (!number.lookingAt()) {
            throw new QuantityFormatException("%s does not begin with a number; %s", Texts.quoted(typed), needed);
        }
        String digits = number.group();
        String rest = text.substring(number.end()).replace(" ", "");
        if (MORE_DIGITS.matcher(rest).matches()) {
            throw new QuantityFormatException(
                    "%s is not one plain number; write it with one decimal point or comma and no thousands separator; %s",
                    Texts.quoted(typed), needed);
        }
        if (COMMA_AS_THOUSANDS.matcher(digits).matches()) {
            throw new QuantityFormatException(
                    "%s may mean %s or %s; write the one that is meant",
                    Texts.quoted(typed), digits.replace(",", ""), digits.replace(',', '.'));
        }
        return new NumberText(value(digits.replace(',', '.'), typed, needed), rest);
    }

    private static double value(String digits, String typed, Text needed) {
        double value = Double.parseDouble(digits);
        boolean vanished = value == 0 && digits.split("[eE]", 2)[0].matches(".*[1-9].*");
        if (Double.isInfinite(value) || vanished) {
            throw new QuantityFormatException(
                    vanished ? "%s is too small to compute with; %s" : "%s is too large to compute with; %s",
                    Texts.quoted(typed),
                    needed);
        }
        return value + 0.0;
    }

    /** The shortest decimal digits that read back as exactly this double, without an exponent and without "-0". */
    static String exact(double value) {
        return value == 0 ? "0" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /**
     * The value rounded to a number of significant digits, trailing zeros dropped, never "-0".
     *
     * <p>From 1e-6 to below 1e10 without an exponent; whole digits are never replaced by zeros.
     */
    static String significant(double value, int significantDigits) {
        if (value == 0) {
            return "0";
        }
        BigDecimal shortened =
                BigDecimal.valueOf(value).round(new MathContext(significantDigits, RoundingMode.HALF_UP));
        int exponent = shortened.precision() - shortened.scale() - 1;
        if (exponent >= SMALLEST_PLAIN_EXPONENT && exponent <= LARGEST_PLAIN_EXPONENT) {
            return round(value, significantDigits).stripTrailingZeros().toPlainString();
        }
        return shortened.movePointLeft(exponent).stripTrailingZeros().toPlainString() + "e" + exponent;
    }

    /** Rounds half away from zero to significant digits, but never left of the decimal point. */
    static BigDecimal round(double value, int significantDigits) {
        BigDecimal cleaned = cleaned(value);
        int wholeDigits = cleaned.precision() - cleaned.scale();
        int digits = Math.max(significantDigits, wholeDigits);
        return cleaned.round(new MathContext(digits, RoundingMode.HALF_UP));
    }

    /** The value to twelve digits, so that the last bits of a unit conversion do not decide how a tie is rounded. */
    static BigDecimal cleaned(double value) {
        return BigDecimal.valueOf(value).round(CLEANED);
    }
}
