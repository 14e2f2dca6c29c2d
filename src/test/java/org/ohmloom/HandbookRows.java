package org.ohmloom;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Rows of published tables and worked examples kept for checks; each file names its source. */
public final class HandbookRows {

    private HandbookRows() {}

    /** The rows of a file of handbooks, by the heads of its columns. */
    public static List<Map<String, String>> of(String file) {
        return records("handbooks/" + file).stream().map(CSVRecord::toMap).toList();
    }

    /** The rows of any file in {@code src/test/resources/references}. */
    public static List<CSVRecord> records(String path) {
        try (InputStream stream = HandbookRows.class.getResourceAsStream("/references/" + path);
                InputStreamReader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            return CSVFormat.DEFAULT
                    .builder()
                    .setCommentMarker('#')
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)
                    .getRecords();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
