package org.ohmloom.tables;

import java.util.OptionalDouble;

/**
 * Distance between ties round a bundle.
 *
 * @param upToMm    largest bundle diameter this row is for, mm; empty for the last one
 * @param spacingMm distance, mm, with its source
 */
public record TieSpacing(OptionalDouble upToMm, CitedValue spacingMm) {

    /** Reads a row with the columns upTo and spacing. */
    static TieSpacing read(RowReader row) {
        OptionalDouble upTo = row.optionalPositive("upTo", "mm");
        String name = upTo.isPresent() ? "up to " + row.text("upTo") + " mm" : "larger";
        return new TieSpacing(upTo, new CitedValue(row.positive("spacing", "mm"), row.citation(name, "spacing")));
    }
}
