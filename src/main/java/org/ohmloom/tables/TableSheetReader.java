package org.ohmloom.tables;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/**
 * Reads one table file: the comment head, then plain CSV with a header line.
 *
 * <p>Refuses, with file, line and column: a missing head key, an unknown status, a wrong number of cells, a column named
 * twice, units for a column that is not there, and two rows with the same key (the columns the head names under "key",
 * or the first column).
 */
final class TableSheetReader {
    private static final String STATUS = "status";

    private final String fileName;
    private final TableHead head;
    private final List<String> header = new ArrayList<>();
    private final List<TableRow> rows = new ArrayList<>();
    private final Map<String, Integer> lineOfKey = new HashMap<>();

    private TableSheetReader(String fileName, TableHead head) {
        this.fileName = fileName;
        this.head = head;
    }

    static TableSheet read(String fileName, String text) {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        List<String> lines = plain.lines().toList();
        TableHead head = TableHead.read(fileName, lines);
        TableSheetReader reader = new TableSheetReader(fileName, head);
        reader.status(head.texts().get(STATUS), head.line(STATUS));
        reader.readBody(lines.stream().skip(head.length()).collect(Collectors.joining("\n")));
        List<TableColumn> columns = reader.columns();
        return new TableSheet(fileName, head.texts(), columns, reader.rows);
    }

    private void readBody(String body) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setTrim(true)
                .setIgnoreEmptyLines(false)
                .get();
        int line = head.length() + 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(body), format)) {
            for (CSVRecord cells : parser) {
                accept(line, cells.toList());
                line = head.length() + (int) parser.getCurrentLineNumber() + 1;
            }
        } catch (IOException | UncheckedIOException e) {
            throw unfit(
                    line, "", Refusals.text("the line is not plain CSV; close every quotation mark on its own line"));
        }
        if (rows.isEmpty()) {
            throw unfit(
                    line,
                    "",
                    Refusals.text("the table has no rows; write a header line and at least one row below the head"));
        }
    }

    private void accept(int line, List<String> cells) {
        if (cells.size() == 1 && cells.get(0).isEmpty()) {
            return;
        }
        if (header.isEmpty()) {
            acceptHeader(line, cells);
        } else {
            acceptRow(line, cells);
        }
    }

    private void acceptHeader(int line, List<String> cells) {
        Set<String> seen = new HashSet<>();
        for (String name : cells) {
            if (name.isEmpty() || !seen.add(name)) {
                throw unfit(
                        line,
                        name,
                        Refusals.text("a column has no name or one used already; give each column its own name"));
            }
        }
        header.addAll(cells);
        for (String key : List.of("units", "column status")) {
            for (String column : head.pairs(key).keySet()) {
                if (!seen.contains(column)) {
                    throw unfit(
                            head.line(key),
                            column,
                            Refusals.text(
                                    "%s names a column that is not there; use one of %s",
                                    key, String.join(", ", header)));
                }
            }
        }
        keyColumns();
    }

    private void acceptRow(int line, List<String> cells) {
        if (cells.size() != header.size()) {
            throw unfit(
                    line,
                    "",
                    Refusals.text(
                            "the row has %s cells; write %s, one for each of %s",
                            cells.size(), header.size(), String.join(", ", header)));
        }
        List<String> keyColumns = keyColumns();
        String key = keyColumns.stream()
                .map(column -> cells.get(header.indexOf(column)))
                .collect(Collectors.joining(" / "));
        Integer earlier = lineOfKey.putIfAbsent(key, line);
        if (earlier != null) {
            String column = String.join(" ", keyColumns);
            throw unfit(line, column, Refusals.text("'%s' is already in line %s; keep one row for it", key, earlier));
        }
        int statusIndex = header.indexOf(STATUS);
        String own = statusIndex < 0 ? "" : cells.get(statusIndex);
        String statusText = own.isEmpty() ? head.texts().get(STATUS) : own;
        List<String> values = new ArrayList<>(cells);
        if (statusIndex >= 0) {
            values.remove(statusIndex);
        }
        rows.add(new TableRow(line, values, status(statusText, line), statusText));
    }

    private List<String> keyColumns() {
        String text = head.texts().get("key");
        List<String> columns = text == null ? header.subList(0, 1) : List.of(text.split("\\s+"));
        for (String column : columns) {
            if (!header.contains(column)) {
                throw unfit(
                        head.line("key"),
                        column,
                        Refusals.text(
                                "key names a column that is not there; use one of %s", String.join(", ", header)));
            }
        }
        return columns;
    }

    private List<TableColumn> columns() {
        Map<String, String> units = head.pairs("units");
        Map<String, String> statuses = head.pairs("column status");
        List<TableColumn> columns = new ArrayList<>();
        for (String name : header) {
            if (!name.equals(STATUS)) {
                String own = statuses.get(name);
                Status status = own == null ? Status.PUBLISHED : status(own, head.line("column status"));
                columns.add(new TableColumn(name, units.getOrDefault(name, ""), status));
            }
        }
        return columns;
    }

    private Status status(String text, int line) {
        return Status.parse(text)
                .orElseThrow(() ->
                        unfit(line, STATUS, Refusals.text("'%s' is not a status; write %s", text, Status.CHOICES)));
    }

    private TableFormatException unfit(int line, String column, Text problem) {
        return new TableFormatException(fileName, line, column, problem);
    }
}
