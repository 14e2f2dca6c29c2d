package org.ohmloom.tables;

import java.util.Optional;
import org.ohmloom.units.Gauge;

/**
 * The largest protective devices for one conductor size.
 *
 * @param gauge       the size
 * @param breakerAmps the largest circuit breaker, A, where listed
 * @param fuseAmps    the largest fuse, A, where listed
 */
public record ProtectorRow(Gauge gauge, Optional<CitedValue> breakerAmps, Optional<CitedValue> fuseAmps) {
    /** Reads a row with the columns gauge, breakerAmps and fuseAmps. */
    static ProtectorRow read(RowReader row) {
        return new ProtectorRow(row.gauge("gauge"), amps(row, "breakerAmps"), amps(row, "fuseAmps"));
    }

    private static Optional<CitedValue> amps(RowReader row, String column) {
        return row.optionalText(column)
                .map(cell -> new CitedValue(
                        row.positive(column, "A"),
                        row.citation(row.gauge("gauge").text(), column)));
    }
}
