package org.ohmloom.signal.calibration;

import static org.ohmloom.units.Require.positive;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tyre as its side wall says it, {@code 275/40 R20}: width, height in percent of the width, rim.
 *
 * <p>Its diameter is twice the height and the rim: 2 x 275 x 0.40 + 20 x 25.4 = 728 mm (textbook). Under load it rolls on a few percent
 * less, so a measured one is better.
 *
 * @param widthMm       width, mm, more than 0
 * @param heightPercent height over width, percent, more than 0
 * @param rimInchCount  diameter of the rim, inches, more than 0
 */
public record TyreSize(double widthMm, double heightPercent, double rimInchCount) {

    private static final Pattern TEXT =
            Pattern.compile("\\s*(\\d+)\\s*/\\s*(\\d+)\\s*(?:[xX]|Z?R)?\\s*(\\d+(?:\\.\\d+)?)\\s*");
    private static final double METRES_PER_INCH = 0.0254;

    public TyreSize {
        positive(widthMm, "width of a tyre");
        positive(heightPercent, "height of a tyre");
        positive(rimInchCount, "rim of a tyre");
    }

    /** The tyre a text names; empty when it names none. */
    public static Optional<TyreSize> parse(String text) {
        Matcher found = TEXT.matcher(text);
        return found.matches()
                ? Optional.of(new TyreSize(
                        Double.parseDouble(found.group(1)),
                        Double.parseDouble(found.group(2)),
                        Double.parseDouble(found.group(3))))
                : Optional.empty();
    }

    /** Diameter without load, m. */
    public double diameterMetres() {
        return 2 * widthMm / 1000 * heightPercent / 100 + rimInchCount * METRES_PER_INCH;
    }

    /** Way in one turn, m. */
    public double circumferenceMetres() {
        return Math.PI * diameterMetres();
    }
}
