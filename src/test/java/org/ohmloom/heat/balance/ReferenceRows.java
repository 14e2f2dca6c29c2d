package org.ohmloom.heat.balance;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the published points in {@code src/test/resources/references/heat}; the head of each file names its source. */
final class ReferenceRows {

    private ReferenceRows() {}

    static List<CSVRecord> of(String name) {
        try (InputStream stream = ReferenceRows.class.getResourceAsStream("/references/heat/" + name);
                InputStreamReader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            return CSVFormat.DEFAULT
                    .builder()
                    .setCommentMarker('#')
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)
                    .getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
