package org.ohmloom.tables;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One table file as it stands: its head, its columns and its rows with their status.
 *
 * @param fileName the file's name, with its folder for those that come with the program
 * @param head     the head keys and their text, in file order
 * @param columns  the columns, without the status column
 * @param rows     the rows in file order
 */
public record TableSheet(String fileName, Map<String, String> head, List<TableColumn> columns, List<TableRow> rows) {
    /** Keeps unmodifiable copies. */
    public TableSheet {
        head = Collections.unmodifiableMap(new LinkedHashMap<>(head));
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** What the file is called on the command line: its name without folder and ".csv"; no two files share it. */
    public String name() {
        return fileName.substring(fileName.lastIndexOf('/') + 1).replaceFirst("\\.csv$", "");
    }

    /** What the table is called in other files, for its kind: the head's id, or the file's name. */
    public String id() {
        return head.getOrDefault("id", name());
    }

    /** What the table is, for people. */
    public String title() {
        return head.getOrDefault("title", id());
    }

    /** The kinds of use the table is read for, as in "conductors"; "reference" when it is only looked up by people. */
    public List<String> kinds() {
        return List.of(head.getOrDefault("kind", "reference").split("\\s*,\\s*"));
    }

    /** The document. */
    public String source() {
        return head.getOrDefault("source", "");
    }

    /** The document's edition. */
    public String edition() {
        return head.getOrDefault("edition", "");
    }

    /** The table or clause of the document. */
    public String table() {
        return head.getOrDefault("table", "");
    }

    /** The status of every row that gives none of its own, as written. */
    public String statusText() {
        return head.getOrDefault("status", "");
    }

    /** What else the reader should know; empty when nothing. */
    public String note() {
        return head.getOrDefault("note", "");
    }

    /** Where the column stands, from 0; -1 when there is no such column. */
    public int columnIndex(String name) {
        for (int index = 0; index < columns.size(); index++) {
            if (columns.get(index).name().equals(name)) {
                return index;
            }
        }
        return -1;
    }

    /** How well one cell is founded: the weaker of its row's and its column's status. */
    public Status cellStatus(TableRow row, int column) {
        return row.status().weaker(columns.get(column).status());
    }
}
