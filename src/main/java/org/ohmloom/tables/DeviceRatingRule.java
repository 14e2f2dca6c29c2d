package org.ohmloom.tables;

/**
 * How large a protective device may be for the conductor it protects.
 *
 * @param basis            the design basis it belongs to
 * @param fromVolts        the system voltage from which it holds, V
 * @param ampacityRatio    largest rating over the conductor's ampacity
 * @param nextSizeRatio    the next standard rating above the ampacity is allowed up to this ratio
 * @param citation         where it comes from
 */
public record DeviceRatingRule(
        String basis, double fromVolts, double ampacityRatio, double nextSizeRatio, Citation citation) {

    /** Reads a row with the columns basis, fromVolts, percentOfAmpacity and nextSizePercent. */
    static DeviceRatingRule read(RowReader row) {
        String text = row.text("basis") + " from " + row.text("fromVolts") + " V";
        return new DeviceRatingRule(
                row.text("basis"),
                row.number("fromVolts", "V"),
                row.positive("percentOfAmpacity", "1"),
                row.positive("nextSizePercent", "1"),
                row.citation(text, "percentOfAmpacity"));
    }
}
