package org.ohmloom.heat.balance;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.ohmloom.HandbookRows;

/** Reads the published points in {@code src/test/resources/references/heat}; the head of each file names its source. */
final class ReferenceRows {

    private ReferenceRows() {}

    static List<CSVRecord> of(String name) {
        return HandbookRows.records("heat/" + name);
    }

    static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }

    /** The row with that text in its first column. */
    static CSVRecord row(String name, String first) {
        return of(name).stream()
                .filter(each -> each.get(0).equals(first))
                .findFirst()
                .orElseThrow(() -> new AssertionError(name + " has no row " + first));
    }
}
