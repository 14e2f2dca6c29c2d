package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** Rows of text in aligned columns: words to the left, numbers to the right. */
final class TextTable {

    /** Where the cells of a column stand. */
    enum Align {
        LEFT,
        RIGHT
    }

    private record Column(String title, Align align) {}

    private final List<Column> columns = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();

    /** Adds a column of words. */
    TextTable left(String title) {
        columns.add(new Column(title, Align.LEFT));
        return this;
    }

    /** Adds a column of numbers. */
    TextTable right(String title) {
        columns.add(new Column(title, Align.RIGHT));
        return this;
    }

    /** Adds a row with a cell for each column. */
    void row(String... cells) {
        rows.add(List.of(cells));
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** Prints the rows under their titles, indented by two. */
    void print(PrintWriter out) {
        int[] widths = new int[columns.size()];
        for (int k = 0; k < widths.length; k++) {
            widths[k] = columns.get(k).title().length();
            for (List<String> row : rows) {
                widths[k] = Math.max(widths[k], row.get(k).length());
            }
        }
        out.println(line(columns.stream().map(Column::title).toList(), widths));
        rows.forEach(row -> out.println(line(row, widths)));
    }

    private String line(List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int k = 0; k < widths.length; k++) {
            String gap = " ".repeat(widths[k] - cells.get(k).length());
            line.append("  ");
            if (columns.get(k).align() == Align.RIGHT) {
                line.append(gap).append(cells.get(k));
            } else {
                line.append(cells.get(k)).append(gap);
            }
        }
        return line.toString().stripTrailing();
    }
}
