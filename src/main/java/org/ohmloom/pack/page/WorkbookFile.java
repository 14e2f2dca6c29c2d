package org.ohmloom.pack.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * All tables of a pack as one spreadsheet workbook (ISO/IEC 29500), a sheet for each: heads in bold, numbers as numbers
 * with every digit, texts as texts and never as formulas. The times in it are set to the first the format knows, so that
 * the same tables give the same bytes.
 */
public final class WorkbookFile {
    private static final int LONGEST_NAME = 31;
    private static final int WIDEST_COLUMN = 60;
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);
    private static final String CREATED = "(<dcterms:created[^>]*>)[^<]*(</dcterms:created>)";
    private static final String NO_DATE = "$11980-01-01T00:00:00Z$2";

    private final Map<String, List<Block.Table>> sheets = new LinkedHashMap<>();

    /**
     * Adds the tables of a report, those of one file on one sheet under one head.
     *
     * @param document what the sheets are called, followed by the part of the table
     */
    public void add(String document, Report report) {
        report.tablesByFile()
                .forEach((part, tables) -> sheets.put(name(part.isEmpty() ? document : document + " " + part), tables));
    }

    /** Whether there is no table. */
    public boolean isEmpty() {
        return sheets.isEmpty();
    }

    /** The file. */
    public byte[] bytes() throws IOException {
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(written, "Ohmloom", "1.0")) {
            for (Map.Entry<String, List<Block.Table>> sheet : sheets.entrySet()) {
                fill(workbook.newWorksheet(sheet.getKey()), sheet.getValue());
            }
        }
        return withoutTimes(written.toByteArray());
    }

    /** A name that every spreadsheet takes, different from those before. */
    private String name(String wanted) {
        String plain = wanted.replaceAll("[\\[\\]:*?/\\\\]", "-");
        String name = plain.substring(0, Math.min(LONGEST_NAME, plain.length()));
        for (int n = 2; sheets.keySet().stream().anyMatch(name::equalsIgnoreCase); n++) {
            String end = " " + n;
            name = plain.substring(0, Math.min(LONGEST_NAME - end.length(), plain.length())) + end;
        }
        return name;
    }

    private static void fill(Worksheet sheet, List<Block.Table> tables) {
        List<Column> columns = tables.get(0).columns();
        int[] widest = new int[columns.size()];
        for (int k = 0; k < columns.size(); k++) {
            sheet.value(0, k, columns.get(k).fileHead());
            sheet.style(0, k).bold().set();
            widest[k] = columns.get(k).fileHead().length();
        }
        int row = 1;
        for (Block.Table table : tables) {
            for (Row item : table.items()) {
                for (int k = 0; k < columns.size(); k++) {
                    Cell cell = item.cells().get(k);
                    put(sheet, row, k, cell);
                    widest[k] = Math.max(widest[k], cell.printed(columns.get(k)).length());
                }
                row++;
            }
        }
        for (int k = 0; k < widest.length; k++) {
            sheet.width(k, Math.min(WIDEST_COLUMN, widest[k] + 2));
        }
        sheet.freezePane(0, 1);
    }

    private static void put(Worksheet sheet, int row, int column, Cell cell) {
        Object filed = cell.filed();
        if (filed instanceof Double number && Double.isFinite(number)) {
            sheet.value(row, column, number);
        } else if (!filed.toString().isEmpty()) {
            sheet.value(row, column, filed.toString());
        }
    }

    /** The archive in a file of its own for a moment: its directory, not its stream, tells how long its parts are. */
    private static byte[] withoutTimes(byte[] archive) throws IOException {
        Path file = Files.createTempFile("ohmloom-tables", ".zip");
        try {
            Files.write(file, archive);
            try (ZipFile from = new ZipFile(file.toFile())) {
                return withoutTimes(from);
            }
        } finally {
            Files.deleteIfExists(file);
        }
    }

    private static byte[] withoutTimes(ZipFile from) throws IOException {
        ByteArrayOutputStream copy = new ByteArrayOutputStream();
        try (ZipOutputStream to = new ZipOutputStream(copy)) {
            for (ZipEntry entry : Collections.list(from.entries())) {
                byte[] content = from.getInputStream(entry).readAllBytes();
                if (entry.getName().equals("docProps/core.xml")) {
                    String text = new String(content, StandardCharsets.UTF_8);
                    content = text.replaceAll(CREATED, NO_DATE).getBytes(StandardCharsets.UTF_8);
                }
                ZipEntry without = new ZipEntry(entry.getName());
                without.setTimeLocal(NO_TIME);
                to.putNextEntry(without);
                to.write(content);
                to.closeEntry();
            }
        }
        return copy.toByteArray();
    }
}
