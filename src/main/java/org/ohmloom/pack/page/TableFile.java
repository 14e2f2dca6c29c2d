package org.ohmloom.pack.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.store.CsvText;
import org.ohmloom.units.Require;

/** The files beside a report: its tables as comma-separated text by RFC 4180, numbers with every digit. */
public final class TableFile {

    private TableFile() {}

    /**
     * The texts of a report's table files by the last part of their names; tables of one name follow each other under one
     * head. Headings and sums are left out: every row is a thing of the list.
     */
    public static Map<String, String> texts(Report report) {
        Map<String, String> texts = new LinkedHashMap<>();
        report.tablesByFile().forEach((name, tables) -> texts.put(name, text(tables)));
        return texts;
    }

    private static String text(List<Block.Table> tables) {
        List<Column> columns = tables.get(0).columns();
        CsvText csv = new CsvText(columns.stream().map(Column::fileHead).toArray(String[]::new));
        for (Block.Table table : tables) {
            Require.that(table.columns().equals(columns), "tables of one file need the same columns");
            for (Row row : table.items()) {
                csv.row(row.cells().stream().map(Cell::filed).toArray());
            }
        }
        return csv.text();
    }
}
