package org.ohmloom.manual;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ohmloom.tables.Status;
import org.ohmloom.tables.TableColumn;
import org.ohmloom.tables.TableRow;
import org.ohmloom.tables.TableSheet;
import org.ohmloom.tables.WireTables;

/** Writes the pages of the tables that come with the program from the tables themselves, row by row. */
final class TablePages {

    static final String FOLDER = "tables";

    /** Keys of the head that a page tells in its own words, or that only the reader of the file needs. */
    private static final Set<String> TOLD = Set.of(
            "kind", "id", "title", "source", "edition", "table", "status", "units", "column status", "key", "note");

    private static final String HEAD =
            """
            # Tables

            The published data everything is computed from. Every value keeps its source and its status:

            - **published**: read in the document that is cited;
            - **computed**: follows from a formula the table names;
            - **from memory**: recalled from the document that is cited, not read there again;
            - **common practice, no source**: what the trade does.

            A result says which row it rests on, and with which status unless that is *published*. Your own tables go in a folder
            `wire-tables` beside the harness file, in the form of the files in the repository's `wire-tables`.

            | table | what it is | source | status |
            |---|---|---|---|
            """;

    private TablePages() {}

    /** The page of a table. */
    static String id(TableSheet sheet) {
        return FOLDER + "/" + sheet.name();
    }

    /** The page of the table a citation names: its document and its table stand in the text. */
    static Optional<String> citedIn(String text) {
        return WireTables.bundled().sheets().stream()
                .filter(sheet -> !sheet.table().isBlank() && text.contains(sheet.table() + ", row "))
                .filter(sheet -> sheet.source().equals("none") || text.contains(sheet.source()))
                .map(TablePages::id)
                .findFirst();
    }

    static Map<String, String> write() {
        Map<String, String> pages = new LinkedHashMap<>();
        StringBuilder list = new StringBuilder(HEAD);
        Map<String, TableSheet> byName = new TreeMap<>();
        WireTables.bundled().sheets().forEach(sheet -> byName.put(sheet.name(), sheet));
        byName.values().forEach(sheet -> {
            list.append("| [`" + sheet.name() + "`](" + sheet.name() + ".md) | " + cell(sheet.title()) + " | "
                    + cell(document(sheet)) + " | " + cell(sheet.statusText()) + " |\n");
            pages.put(id(sheet), page(sheet));
        });
        pages.put(FOLDER + "/" + Manual.HOME, list.toString());
        return pages;
    }

    private static String page(TableSheet sheet) {
        StringBuilder page = new StringBuilder("# " + sheet.title() + "\n\n");
        page.append("Table `" + sheet.name() + "`, known to other tables as `" + sheet.id() + "`.\n\n");
        sheet.kinds().forEach(kind -> page.append(TableUses.of(kind)).append("\n"));
        page.append("\n**Source.** " + document(sheet) + "; " + sheet.table() + ". Status: " + sheet.statusText()
                + ", where a row or column says nothing else.\n");
        sheet.head().forEach((key, text) -> {
            if (!TOLD.contains(key)) {
                page.append("\n**" + capital(key) + ".** " + text + "\n");
            }
        });
        if (!sheet.note().isEmpty()) {
            page.append("\n**Note.** " + capital(sheet.note()) + "\n");
        }
        rows(sheet, page);
        return page.append("\nSee also: [all tables](README.md).\n").toString();
    }

    private static void rows(TableSheet sheet, StringBuilder page) {
        page.append("\n## Rows\n\n|");
        StringBuilder line = new StringBuilder("|");
        List<TableColumn> columns = sheet.columns();
        for (TableColumn column : columns) {
            String unit = column.unit().isEmpty() || column.unit().equals("1") ? "" : " (" + column.unit() + ")";
            String status = column.status() == Status.PUBLISHED
                    ? ""
                    : ", " + column.status().words();
            page.append(" " + cell(column.name() + unit + status) + " |");
            line.append("---|");
        }
        page.append(" status |\n").append(line).append("---|\n");
        for (TableRow row : sheet.rows()) {
            page.append("|");
            row.cells().forEach(text -> page.append(" " + cell(text) + " |"));
            page.append(" " + cell(row.statusText()) + " |\n");
        }
    }

    private static String document(TableSheet sheet) {
        if (sheet.source().equals("none")) {
            return "no document";
        }
        boolean dated = !Set.of("none", "not stated", "").contains(sheet.edition());
        return sheet.source() + (dated ? ", " + sheet.edition() : "");
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private static String cell(String text) {
        return text.replace("|", "\\|").replace("*", "\\*").replace("<", "\\<").replace("_", "\\_");
    }
}
