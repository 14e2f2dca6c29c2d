package org.ohmloom.tables;

import java.util.Optional;

/**
 * One rated current of a fuse series.
 *
 * @param ratingAmps rated current, A, more than 0
 * @param colour     colour of the body; empty where the series has none of its own
 * @param ratedVolts rated voltage, V, more than 0
 * @param citation   where rating and colour come from
 */
public record FuseRating(double ratingAmps, Optional<String> colour, double ratedVolts, Citation citation) {
    /** Reads a row with the columns ratingAmps, colour and ratedVolts. */
    static FuseRating read(RowReader row) {
        double rating = row.positive("ratingAmps", "A");
        return new FuseRating(
                rating,
                row.optionalText("colour"),
                row.positive("ratedVolts", "V"),
                row.citation(row.text("ratingAmps") + " A " + row.text("type"), "ratingAmps"));
    }
}
