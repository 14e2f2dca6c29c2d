package org.ohmloom.tables;

import org.ohmloom.words.Text;

/**
 * A type of circuit breaker by the way it resets.
 *
 * @param id        the standard's own name, as in "SAE J553 Type III"
 * @param reset     automatic, modified or manual
 * @param behaviour what it does on a fault
 * @param citation  where it comes from
 */
public record BreakerType(String id, String reset, Text behaviour, Citation citation) {
    /** Reads a row with the columns type, reset and behaviour. */
    static BreakerType read(RowReader row) {
        String id = row.text("type");
        return new BreakerType(
                id, row.text("reset"), TableWords.text(row.text("behaviour")), row.citation(id, "reset"));
    }
}
