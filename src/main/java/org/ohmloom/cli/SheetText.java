package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.ohmloom.tables.TableColumn;
import org.ohmloom.tables.TableRow;
import org.ohmloom.tables.TableSheet;

/** Published tables as text. */
final class SheetText {

    private SheetText() {}

    /** All tables with source and status. */
    static void list(List<TableSheet> sheets, PrintWriter out) {
        TextTable table = new TextTable()
                .left("TABLE")
                .right("ROWS")
                .left("STATUS")
                .left("SOURCE")
                .left("EDITION")
                .left("TABLE OR CLAUSE");
        sheets.forEach(sheet -> table.row(
                sheet.name(),
                String.valueOf(sheet.rows().size()),
                inShort(sheet.statusText()),
                sheet.source(),
                sheet.edition(),
                sheet.table()));
        table.print(out);
        out.println();
        out.println("'ohmloom tables NAME' prints one of them. A row may have a status of its own.");
    }

    /** A status without the formula in brackets behind it. */
    private static String inShort(String status) {
        return status.replaceFirst("\\s*\\(.*", "").replaceFirst(", no source$", "");
    }

    /** One table whole. */
    static void print(TableSheet sheet, PrintWriter out) {
        out.println(sheet.title());
        out.println("  source: " + sheet.source() + ", " + sheet.edition() + ", " + sheet.table());
        out.println("  status: " + sheet.statusText());
        if (!sheet.note().isEmpty()) {
            out.println(Wrap.text("  note: " + sheet.note(), 100));
        }
        out.println();
        TextTable table = new TextTable();
        for (TableColumn column : sheet.columns()) {
            String title = column.unit().isEmpty() ? column.name() : column.name() + " [" + column.unit() + "]";
            if (column.unit().isEmpty()) {
                table.left(title);
            } else {
                table.right(title);
            }
        }
        table.left("status");
        for (TableRow row : sheet.rows()) {
            List<String> cells = new ArrayList<>(row.cells());
            cells.add(row.statusText());
            table.row(cells.toArray(String[]::new));
        }
        table.print(out);
    }
}
