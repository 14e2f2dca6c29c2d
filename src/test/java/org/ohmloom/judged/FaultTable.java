package org.ohmloom.judged;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * The table of faults found and missed, as it stands in the page of validation. The full campaign compares it with the one kept
 * in the test resources, or with {@code -Dohmloom.update=true} keeps it; the page takes it from there.
 */
public final class FaultTable {

    private static final Path KEPT = Path.of("src/test/resources/references/judged/faults.md");

    private FaultTable() {}

    static String text(int harnesses, List<FaultRow> rows) {
        StringBuilder text = new StringBuilder("## Faults in the returns of generated harnesses\n\n"
                + harnesses
                + " generated harnesses without a fault give no error and no warning. Into each of them one fault of"
                + " each kind is put\nat a random place, its size half to twice the limit, logarithmically even. Whether a"
                + " limit is passed is judged by a\nplain dense nodal solution of the harness (LUDecomposition of Apache"
                + " Commons Math 3), written without the code under test;\nevery rule on returns is compared at every"
                + " ground point, control unit and sensor, not only where the fault was aimed.\nSizes within 1 % of"
                + " the limit are not counted. Wires have a measured resistance, so no temperature comes in.\n\n"
                + "| fault | over its limit, found | over, missed | under its limit | false alarms | too near | no place |\n"
                + "|---|---|---|---|---|---|---|\n");
        for (FaultRow row : rows) {
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %d | %d | %d | %d | %d | %d |%n",
                    row.kind().words(),
                    row.over() - Math.min(row.over(), row.misses()),
                    row.misses(),
                    row.under(),
                    row.falseAlarms(),
                    row.inBand(),
                    row.without()));
        }
        return text.toString();
    }

    /** Compares the table with the one kept, or keeps it. */
    static void keep(String text) {
        try {
            if (Boolean.getBoolean("ohmloom.update")) {
                Files.createDirectories(KEPT.getParent());
                Files.writeString(KEPT, text);
            }
            assertEquals(text, Files.readString(KEPT));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** The table that was kept. */
    public static String kept() throws IOException {
        return Files.readString(KEPT);
    }
}
