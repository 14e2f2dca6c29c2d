package org.ohmloom.tables;

import java.util.OptionalDouble;
import org.ohmloom.words.Refusals;

/**
 * One step of a fuse's time-current band: at this multiple of its rating it opens no sooner and no later than this.
 *
 * @param fromRatingAmps   the smallest rating it holds for, A
 * @param toRatingAmps     the largest rating it holds for, A
 * @param multipleRatio    current over rated current, more than 0
 * @param minimumSeconds   it holds at least this long, s; empty when there is no such limit
 * @param maximumSeconds   it has opened by then, s; empty when there is no such limit
 * @param citation         where the limits come from
 */
public record FuseTimeLimit(
        double fromRatingAmps,
        double toRatingAmps,
        double multipleRatio,
        OptionalDouble minimumSeconds,
        OptionalDouble maximumSeconds,
        Citation citation) {

    /** Whether it holds for that rating, A. */
    boolean holdsFor(double ratingAmps) {
        return ratingAmps >= fromRatingAmps && ratingAmps <= toRatingAmps;
    }

    /** Reads a row; the shortest time must not be above the longest. */
    static FuseTimeLimit read(RowReader row) {
        OptionalDouble minimum = row.optionalPositive("minimumSeconds", "s");
        OptionalDouble maximum = row.optionalPositive("maximumSeconds", "s");
        if (minimum.isPresent() && maximum.isPresent() && minimum.getAsDouble() > maximum.getAsDouble()) {
            throw row.unfit("minimumSeconds", Refusals.text("the minimum is above the maximum; check both times"));
        }
        String text = row.text("type") + " " + row.text("fromRatingAmps") + " to " + row.text("toRatingAmps") + " A at "
                + row.text("percentOfRating") + " %";
        return new FuseTimeLimit(
                row.positive("fromRatingAmps", "A"),
                row.positive("toRatingAmps", "A"),
                row.positive("percentOfRating", "1"),
                minimum,
                maximum,
                row.citation(text, "percentOfRating"));
    }
}
