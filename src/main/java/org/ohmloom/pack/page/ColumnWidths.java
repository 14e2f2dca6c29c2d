package org.ohmloom.pack.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Weight;

/**
 * Widths of a table's columns by what is in them.
 *
 * <p>Every column is at least as wide as its widest unbreakable text: the widest word of a column of words, the widest
 * cell of any other. What is left goes to the columns of words, in proportion to what each still lacks to stand on one
 * line; what is left after that widens all a little.
 */
final class ColumnWidths {
    /** Room beside a text in its cell, mm. */
    static final double PADDING_MM = 1.1;

    /** Sample of an insulation colour with the gap behind it, mm. */
    static final double SWATCH_MM = 6.5;

    /** Most a column is widened beyond what its content wants. */
    private static final double MOST_WIDENING = 1.3;

    /** A word wider than this, mm, may be broken. */
    private static final double LONGEST_WORD_MM = 34;

    private final Typesetter typesetter;
    private final double heightMm;

    ColumnWidths(Typesetter typesetter, double heightMm) {
        this.typesetter = typesetter;
        this.heightMm = heightMm;
    }

    /** The widths, mm, in order; empty when the columns cannot stand side by side in the room. */
    Optional<double[]> of(List<Column> columns, List<List<Cell>> rows, double roomMm) {
        double[] least = new double[columns.size()];
        double[] natural = new double[columns.size()];
        for (int k = 0; k < columns.size(); k++) {
            least[k] = headMm(columns.get(k));
            natural[k] = least[k];
            for (List<Cell> row : rows) {
                double whole = wholeMm(columns.get(k), row.get(k));
                natural[k] = Math.max(natural[k], whole);
                least[k] = Math.max(least[k], Math.min(whole, leastMm(columns.get(k), row.get(k))));
            }
        }
        double sum = Arrays.stream(least).sum();
        return sum <= roomMm ? Optional.of(shared(least, natural, roomMm)) : Optional.empty();
    }

    /** Widths for columns too wide for any page: every column gives way, and its texts are broken anywhere. */
    double[] forced(List<Column> columns, List<List<Cell>> rows, double roomMm) {
        double[] wanted = new double[columns.size()];
        for (int k = 0; k < columns.size(); k++) {
            wanted[k] = headMm(columns.get(k));
            for (List<Cell> row : rows) {
                double whole = wholeMm(columns.get(k), row.get(k));
                wanted[k] = Math.max(wanted[k], Math.min(whole, LONGEST_WORD_MM + 2 * PADDING_MM));
            }
        }
        double factor = Math.min(1, roomMm / Arrays.stream(wanted).sum());
        return Arrays.stream(wanted).map(width -> width * factor).toArray();
    }

    private static double[] shared(double[] least, double[] natural, double roomMm) {
        double[] widths = least.clone();
        double left = roomMm - Arrays.stream(least).sum();
        double lacking = Arrays.stream(natural).sum() - Arrays.stream(least).sum();
        double given = lacking > 0 ? Math.min(1, left / lacking) : 0;
        for (int k = 0; k < widths.length; k++) {
            widths[k] += given * (natural[k] - least[k]);
        }
        double total = Arrays.stream(widths).sum();
        double widening = Math.min(MOST_WIDENING, roomMm / total);
        return Arrays.stream(widths).map(width -> width * widening).toArray();
    }

    private double headMm(Column column) {
        double head = typesetter.widestWordMm(column.head(), Weight.BOLD, heightMm);
        double unit = typesetter.widthMm(column.unit(), Weight.REGULAR, heightMm);
        return Math.max(head, unit) + 2 * PADDING_MM;
    }

    private double wholeMm(Column column, Cell cell) {
        double text = 0;
        for (String line : cell.printed(column).split("\n")) {
            text = Math.max(text, typesetter.widthMm(line, TableSetting.weight(cell), heightMm));
        }
        return text + 2 * PADDING_MM + (cell.colour().isPresent() ? SWATCH_MM : 0);
    }

    private double leastMm(Column column, Cell cell) {
        if (column.kind() != Column.Kind.WORDS) {
            return wholeMm(column, cell);
        }
        double word = typesetter.widestWordMm(cell.printed(column), TableSetting.weight(cell), heightMm);
        return Math.min(LONGEST_WORD_MM, word) + 2 * PADDING_MM;
    }
}
