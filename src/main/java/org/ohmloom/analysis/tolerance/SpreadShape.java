package org.ohmloom.analysis.tolerance;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How values lie between the ends of a spread: JCGM 101:2008, 6.4. */
public enum SpreadShape {
    /** Anything in between is as likely: 6.4.2. */
    EVEN,
    /** Likeliest as entered, less likely towards both ends in a straight line: 6.4.5 with one corner. */
    PEAKED,
    /** Normal about the middle; the ends are two standard deviations away and 1 in 20 lies beyond: 6.4.7. */
    NORMAL;

    private static final double ENDS_IN_DEVIATIONS = 2;

    /** How options and tables write it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The shape an option or a table means. */
    public static Optional<SpreadShape> of(String key) {
        return Arrays.stream(values()).filter(each -> each.key().equals(key)).findFirst();
    }

    /**
     * The value that a share of all values lies below.
     *
     * @param low   one end
     * @param high  the other end, not below
     * @param share more than 0, less than 1
     */
    double value(double low, double high, double share) {
        return switch (this) {
            case EVEN -> low + share * (high - low);
            case PEAKED -> peaked(low, high, share);
            case NORMAL -> mean(low, high) + (high - low) / 2 / ENDS_IN_DEVIATIONS * NormalQuantile.of(share);
        };
    }

    /** The mean of all values. */
    double mean(double low, double high) {
        return this == PEAKED ? (low + peak(low, high) + high) / 3 : (low + high) / 2;
    }

    private static double peaked(double low, double high, double share) {
        double peak = peak(low, high);
        double rising = high > low ? (peak - low) / (high - low) : 1;
        return share < rising
                ? low + Math.sqrt(share * (high - low) * (peak - low))
                : high - Math.sqrt((1 - share) * (high - low) * (high - peak));
    }

    /** The entered value, or the end next to it. */
    private static double peak(double low, double high) {
        return Math.max(low, Math.min(high, 0));
    }
}
