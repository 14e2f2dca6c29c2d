package org.ohmloom.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.ohmloom.units.Texts;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/**
 * A table a person filled in: comma-separated text by RFC 4180, or with semicolons or tabs between the cells as spreadsheets write
 * it where the comma stands in numbers. The first line that is not blank names the columns.
 *
 * @param name         name of the file, for messages
 * @param heads        names of the columns, none twice
 * @param rows         the lines below that are not blank
 * @param decimalComma whether a comma in a cell can only be a decimal comma, as another sign parts the cells
 */
public record CsvTable(String name, List<String> heads, List<Row> rows, boolean decimalComma) {
    private static final long MOST_BYTES = 32L << 20;
    private static final List<Character> SIGNS = List.of(',', ';', '\t');
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /**
     * One line.
     *
     * @param line  its number in the file, from 1
     * @param cells its cells by the names of the columns, without the space around them
     */
    public record Row(long line, Map<String, String> cells) {
        public Row {
            cells = new LinkedHashMap<>(cells);
        }

        /** What stands in a column; empty for nothing. */
        public String cell(String head) {
            return cells.getOrDefault(head, "");
        }
    }

    public CsvTable {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
    }

    /**
     * Reads a file.
     *
     * @throws CsvTableException when it cannot be read or is no such table; one line for people
     */
    public static CsvTable read(Path file) throws CsvTableException {
        return parse(
                text(file, MOST_BYTES, Refusals.text("more than 32 MB are no table of a person")),
                String.valueOf(file));
    }

    /**
     * The text of a file of a person, without the mark some programs put before it.
     *
     * @param mostBytes most bytes it may have
     * @param tooLarge  what to say of a larger one
     * @throws CsvTableException when it cannot be read, is larger or is no UTF-8 text; one line for people
     */
    public static String text(Path file, long mostBytes, Text tooLarge) throws CsvTableException {
        String name = String.valueOf(file);
        try {
            if (Files.size(file) > mostBytes) {
                throw new CsvTableException("%s: %s", name, tooLarge);
            }
            return unmarked(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
                    .toString());
        } catch (CharacterCodingException otherEncoding) {
            throw new CsvTableException("%s: not UTF-8 text; save the sheet as CSV in UTF-8", name);
        } catch (NoSuchFileException missing) {
            throw new CsvTableException("%s: no such file", name);
        } catch (IOException failed) {
            throw new CsvTableException("%s: cannot be read: %s", name, String.valueOf(failed.getMessage()));
        }
    }

    private static String unmarked(String text) {
        return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    }

    /**
     * Reads a text.
     *
     * @param name what to call it in messages
     * @throws CsvTableException when it is no such table; one line for people
     */
    public static CsvTable parse(String text, String name) throws CsvTableException {
        String plain = unmarked(text);
        char sign = sign(plain);
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(sign)
                .setIgnoreEmptyLines(false)
                .get();
        try (CSVParser parser = CSVParser.parse(plain, format)) {
            return table(parser, name, sign != ',');
        } catch (IOException | UncheckedIOException | IllegalStateException broken) {
            throw new CsvTableException(
                    "%s: a quotation mark is open or stands in the middle of a cell (%s)",
                    name, String.valueOf(broken.getMessage()));
        }
    }

    private static CsvTable table(CSVParser parser, String name, boolean decimalComma) throws CsvTableException {
        List<String> heads = List.of();
        List<Row> rows = new ArrayList<>();
        long before = 0;
        for (CSVRecord record : parser) {
            long line = before + 1;
            before = parser.getCurrentLineNumber();
            List<String> cells = record.stream().map(CsvTable::plain).toList();
            if (cells.stream().allMatch(String::isEmpty)) {
                continue;
            }
            if (heads.isEmpty()) {
                heads = heads(cells, name);
            } else {
                rows.add(row(heads, cells, line, name));
            }
        }
        if (heads.isEmpty()) {
            throw new CsvTableException("%s: empty; the first line names the columns", name);
        }
        return new CsvTable(name, heads.stream().filter(head -> !head.isEmpty()).toList(), rows, decimalComma);
    }

    private static List<String> heads(List<String> cells, String name) throws CsvTableException {
        Set<String> seen = new HashSet<>();
        for (String head : cells) {
            if (!head.isEmpty() && !seen.add(head)) {
                throw new CsvTableException("%s: two columns are named %s", name, Texts.quoted(head));
            }
        }
        return cells;
    }

    private static Row row(List<String> heads, List<String> cells, long line, String name) throws CsvTableException {
        Map<String, String> byHead = new LinkedHashMap<>();
        for (int k = 0; k < cells.size(); k++) {
            String head = k < heads.size() ? heads.get(k) : "";
            if (head.isEmpty() && !cells.get(k).isEmpty()) {
                throw new CsvTableException(
                        "%s, line %s: %s stands in no named column", name, line, Texts.quoted(cells.get(k)));
            }
            byHead.put(head, cells.get(k));
        }
        return new Row(line, byHead);
    }

    /** A cell without the space around it and without the apostrophe that keeps a text from being a formula. */
    private static String plain(String cell) {
        String text = cell.strip();
        return text.matches("'[=+\\-@].*") ? text.substring(1) : text;
    }

    /** What parts the cells: of the signs the one that stands most often in the first line that is not blank, quotes left out. */
    private static char sign(String text) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        String bare = first.replaceAll("\"[^\"]*\"", "");
        char most = ',';
        for (char sign : SIGNS) {
            if (count(bare, sign) > count(bare, most)) {
                most = sign;
            }
        }
        return most;
    }

    private static long count(String text, char sign) {
        return text.chars().filter(each -> each == sign).count();
    }
}
