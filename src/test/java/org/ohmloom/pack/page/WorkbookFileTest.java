package org.ohmloom.pack.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.units.Unit;

@BesideOthers
class WorkbookFileTest {
    private static final List<Column> COLUMNS =
            List.of(Column.code("Wire"), Column.number("Length", Unit.METRE, 1), Column.words("Remark"));

    private static Report report() {
        return new Report(
                List.of(
                        new Block.Table(
                                "",
                                COLUMNS,
                                List.of(
                                        Row.group("A group, on the page only"),
                                        Row.of(Cell.text("W1"), Cell.number(1.0 / 3), Cell.text("=1+1")),
                                        Row.of(Cell.text("W2"), Cell.empty(), Cell.empty())),
                                ""),
                        new Block.Table("a part with a name much too long for a sheet", COLUMNS, List.of(), "none")),
                "");
    }

    private static Map<String, String> parts(byte[] archive) throws IOException {
        Map<String, String> parts = new TreeMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return parts;
    }

    private static byte[] written() throws IOException {
        WorkbookFile file = new WorkbookFile();
        file.add("wire-list", report());
        file.add("wire-list", report());
        return file.bytes();
    }

    @Test
    void numbersKeepEveryDigitAndATextThatLooksLikeAFormulaStaysAText() throws IOException {
        Map<String, String> parts = parts(written());

        String sheet = parts.get("xl/worksheets/sheet1.xml");
        assertTrue(sheet.contains("<v>0.3333333333333333</v>"), sheet);
        assertFalse(sheet.contains("<f>"), sheet);
        assertTrue(parts.get("xl/sharedStrings.xml").contains("=1+1"));
        assertFalse(parts.get("xl/sharedStrings.xml").contains("A group"));
    }

    @Test
    void namesOfSheetsAreShortEnoughAndDiffer() throws IOException {
        String workbook = parts(written()).get("xl/workbook.xml");
        List<String> names = Pattern.compile("<sheet name=\"([^\"]*)\"")
                .matcher(workbook)
                .results()
                .map(found -> found.group(1))
                .toList();

        assertEquals(4, names.stream().distinct().count(), names.toString());
        assertTrue(names.stream().allMatch(name -> name.length() <= 31), names.toString());
    }

    @Test
    void aTableThatIsInFilesOnlyHasASheetToo() throws IOException {
        Row row = Row.of(Cell.text("W9"), Cell.number(2), Cell.empty());
        Block.Table table = new Block.Table("all", COLUMNS, List.of(row), "");
        Report report = new Report(List.of(new Block.FileOnly(table)), "");
        WorkbookFile file = new WorkbookFile();
        file.add("calculation", report);

        assertTrue(parts(file.bytes()).get("xl/workbook.xml").contains("\"calculation all\""));
        assertEquals(List.of("all"), List.copyOf(TableFile.texts(report).keySet()));
    }

    @Test
    void theSameTablesGiveTheSameBytes() throws Exception {
        byte[] first = written();
        Thread.sleep(1100); // longer than the second that dates in such a file are rounded to
        assertArrayEquals(first, written());
    }
}
