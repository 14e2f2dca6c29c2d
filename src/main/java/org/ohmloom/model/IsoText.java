package org.ohmloom.model;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import org.ohmloom.units.Texts;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;

/** Dates kept as texts of ISO 8601. */
final class IsoText {
    private static final int DATE_LENGTH = "2026-01-31".length();

    private IsoText() {}

    /**
     * Refuses what is neither a date nor a date and time.
     *
     * @param where whose date it is, for the message
     */
    static void check(String text, Text where) {
        try {
            if (text.length() <= DATE_LENGTH) {
                LocalDate.parse(text);
            } else if (text.endsWith("Z") || text.substring(DATE_LENGTH).matches(".*[+-]\\d{2}:\\d{2}")) {
                OffsetDateTime.parse(text);
            } else {
                LocalDateTime.parse(text);
            }
        } catch (DateTimeException notADate) {
            throw new UnfitException(
                    Refusals.text(
                            "the date of %s is written as 2026-01-31 or 2026-01-31T14:05, not %s",
                            where, Texts.quoted(text)),
                    notADate);
        }
    }
}
