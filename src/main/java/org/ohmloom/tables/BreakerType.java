package org.ohmloom.tables;

/**
 * A type of circuit breaker by the way it resets.
 *
 * @param id        the standard's own name, as in "SAE J553 Type III"
 * @param reset     automatic, modified or manual
 * @param behaviour what it does on a fault
 * @param citation  where it comes from
 */
public record BreakerType(String id, String reset, String behaviour, Citation citation) {
    /** Reads a row with the columns type, reset and behaviour. */
    static BreakerType read(RowReader row) {
        String id = row.text("type");
        return new BreakerType(id, row.text("reset"), row.text("behaviour"), row.citation(id, "reset"));
    }
}
