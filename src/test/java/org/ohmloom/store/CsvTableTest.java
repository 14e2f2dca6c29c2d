package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;

/** Tables as spreadsheets write them. */
@BesideOthers
class CsvTableTest {

    @Test
    void semicolonsAndTabsPartCellsWhereTheCommaStandsInNumbers() throws Exception {
        for (String sign : List.of(";", "\t")) {
            CsvTable table = CsvTable.parse(
                    "\uFEFFNet" + sign + "Measured mΩ\r\nN1" + sign + " 1,25 \r\n\r\nN2" + sign + "\r\n", "t");
            assertEquals(List.of("Net", "Measured mΩ"), table.heads());
            assertEquals("1,25", table.rows().get(0).cell("Measured mΩ"));
            assertEquals(2, table.rows().get(0).line());
            assertEquals(4, table.rows().get(1).line());
            assertTrue(table.decimalComma());
        }
    }

    @Test
    void whatWasWrittenByOursIsReadBack() throws Exception {
        String text = new CsvText("A", "B, with a comma")
                .row("-X1", "quote \" and, comma")
                .row("=1+1", "two\nlines")
                .text();
        CsvTable table = CsvTable.parse(text, "t");

        assertFalse(table.decimalComma());
        assertEquals("-X1", table.rows().get(0).cell("A"));
        assertEquals("quote \" and, comma", table.rows().get(0).cell("B, with a comma"));
        assertEquals("=1+1", table.rows().get(1).cell("A"));
        assertEquals("two\nlines", table.rows().get(1).cell("B, with a comma"));
    }

    @Test
    void whatIsNoTableIsRefusedInOneLine(@TempDir Path folder) throws Exception {
        assertRefused("t: empty; the first line names the columns", "\n \n");
        assertRefused("t: two columns are named 'A'", "A,A\n1,2\n");
        assertRefused("t, line 2: '3' stands in no named column", "A,B\n1,2,3\n");
        Path latin = folder.resolve("latin.csv");
        Files.write(latin, "Temperature °C\n20\n".getBytes(StandardCharsets.ISO_8859_1));
        String message = assertThrows(CsvTableException.class, () -> CsvTable.read(latin))
                .getMessage();
        assertEquals(latin + ": not UTF-8 text; save the sheet as CSV in UTF-8", message);
        assertThrows(CsvTableException.class, () -> CsvTable.read(folder.resolve("none.csv")));
    }

    private static void assertRefused(String message, String text) {
        assertEquals(
                message,
                assertThrows(CsvTableException.class, () -> CsvTable.parse(text, "t"))
                        .getMessage());
    }
}
