package org.ohmloom.tables;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Typical electrical values of a fuse.
 *
 * @param ratingAmps        the rating it holds for, A; empty for the type's usual drop at any rating not listed
 * @param dropVolts         voltage drop at rated current when warm, V
 * @param coldOhms          resistance when cold, ohm
 * @param meltingI2t        the I2 t that melts it, A2s
 */
record FuseResistance(
        OptionalDouble ratingAmps,
        Optional<CitedValue> dropVolts,
        Optional<CitedValue> coldOhms,
        Optional<CitedValue> meltingI2t) {

    /** Resistance of a fuse at rated current over its cold resistance; common practice. */
    static final double HOT_TO_COLD_RATIO = 1.4;

    /** The listed cold resistance, or the one that follows from the drop at that rating; empty when neither is known. */
    Optional<CitedValue> coldOhms(double rating) {
        return coldOhms.or(() -> dropVolts.map(drop -> new CitedValue(
                drop.value() / rating / HOT_TO_COLD_RATIO,
                drop.citation()
                        .withRow(drop.citation().row() + ", drop / rated current / 1.4")
                        .noBetterThan(Status.COMPUTED))));
    }

    static FuseResistance read(RowReader row) {
        OptionalDouble rating = row.optionalPositive("ratingAmps", "A");
        String text = rating.isPresent()
                ? row.text("ratingAmps") + " A " + row.text("type")
                : row.text("type") + ", ratings not listed";
        return new FuseResistance(
                rating,
                value(row, "dropAtRating", "V", text),
                value(row, "coldResistance", "ohm", text),
                value(row, "meltingI2t", "A2s", text));
    }

    private static Optional<CitedValue> value(RowReader row, String column, String unit, String text) {
        return row.optionalText(column)
                .map(cell -> new CitedValue(row.positive(column, unit), row.citation(text, column)));
    }
}
