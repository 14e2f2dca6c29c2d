package org.ohmloom.pack.page;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ohmloom.draw.Weight;

/**
 * Widths of a table's columns by what is in them.
 *
 * <p>Every column is at least as wide as its widest unbreakable text: the widest word of a column of words, the widest
 * cell of any other. What is left goes to the columns of words, first so that nine in ten of their cells stand on one
 * line, then to all cells and to heads, so that none is more than two lines of words, in the order that takes fewer lines;
 * what is left after that widens every column a little.
 */
final class ColumnWidths {
    /** Room beside a text in its cell, mm. */
    static final double PADDING_MM = 1.1;

    /** More room behind a number, so that it keeps apart from words that follow, mm. */
    static final double BEHIND_NUMBER_MM = 1.2;

    /** Sample of an insulation colour with the gap behind it, mm. */
    static final double SWATCH_MM = 6.5;

    /** Room to write a value or initials and a date by hand, mm. */
    private static final double HAND_MM = 24;

    /** Room for a box to tick, mm. */
    private static final double TICK_MM = 7;

    /** Most a column is widened beyond what its content wants. */
    private static final double MOST_WIDENING = 1.3;

    /** Share of the cells that should stand on one line before the rest is thought of. */
    private static final double USUAL = 0.9;

    /** A word wider than this, mm, may be broken. */
    private static final double LONGEST_WORD_MM = 34;

    private static final double ROWS_ON_A_PAGE = 25;

    private static final double NOISE = 1e-9;

    /** Where a head may be broken: at spaces, and behind a hyphen, as the number of an assembly is. */
    private static final String BREAKS = "\\s+|(?<=-)";

    private final Typesetter typesetter;
    private final double heightMm;

    ColumnWidths(Typesetter typesetter, double heightMm) {
        this.typesetter = typesetter;
        this.heightMm = heightMm;
    }

    /** The widths, mm, in order; empty when the columns cannot stand side by side in the room. */
    Optional<double[]> of(List<Column> columns, List<List<Cell>> rows, double roomMm) {
        double[] least = new double[columns.size()];
        double[] usual = new double[columns.size()];
        double[] widest = new double[columns.size()];
        double[] headed = new double[columns.size()];
        double[][] wholes = new double[columns.size()][];
        for (int k = 0; k < columns.size(); k++) {
            Column column = columns.get(k);
            double head = headMm(column);
            double[] whole = new double[rows.size()];
            least[k] = head;
            for (int row = 0; row < whole.length; row++) {
                Cell cell = rows.get(row).get(k);
                whole[row] = wholeMm(column, cell);
                least[k] = Math.max(least[k], Math.min(whole[row], leastMm(column, cell)));
            }
            wholes[k] = whole.clone();
            Arrays.sort(whole);
            usual[k] = Math.max(least[k], usual(whole, aroundMm(column)));
            widest[k] = Math.max(least[k], whole.length == 0 ? 0 : whole[whole.length - 1]);
            headed[k] = Math.max(usual[k], inTwoLinesMm(column.head()) + aroundMm(column));
        }
        if (Arrays.stream(least).sum() > roomMm) {
            return Optional.empty();
        }
        double[] filled = grown(least, usual, roomMm);
        double[] headsFirst = grown(grown(filled, headed, roomMm), widest, roomMm);
        double[] cellsFirst = grown(grown(filled, widest, roomMm), headed, roomMm);
        boolean fewer = lines(columns, wholes, cellsFirst) < lines(columns, wholes, headsFirst);
        return Optional.of(widened(fewer ? cellsFirst : headsFirst, roomMm));
    }

    /** Lines that rows and heads take at least, the head again on every page. */
    private double lines(List<Column> columns, double[][] wholes, double[] widths) {
        double head = 2;
        double[] most = new double[wholes[0].length];
        Arrays.fill(most, 1);
        for (int k = 0; k < widths.length; k++) {
            double around = aroundMm(columns.get(k));
            double room = widths[k] - around + NOISE;
            head = room < inTwoLinesMm(columns.get(k).head()) ? 3 : head;
            for (int row = 0; row < most.length; row++) {
                most[row] = Math.max(most[row], Math.ceil((wholes[k][row] - around) / room));
            }
        }
        double all = Arrays.stream(most).sum();
        return all + head * Math.ceil(all / ROWS_ON_A_PAGE);
    }

    /** Least width of a head that is broken once, mm. */
    private double inTwoLinesMm(String head) {
        double least = typesetter.widthMm(head, Weight.BOLD, heightMm);
        String[] parts = head.split(BREAKS);
        String first = "";
        for (int k = 0; k < parts.length - 1; k++) {
            first = first.isEmpty() || first.endsWith("-") ? first + parts[k] : first + " " + parts[k];
            String second = head.substring(head.indexOf(parts[k + 1], first.length()));
            double wide = Math.max(
                    typesetter.widthMm(first, Weight.BOLD, heightMm),
                    typesetter.widthMm(second, Weight.BOLD, heightMm));
            least = Math.min(least, wide);
        }
        return least;
    }

    /** Width that lets nine in ten cells of every column stand on one line, mm. */
    double usualMm(List<Column> columns, List<List<Cell>> rows) {
        double sum = 0;
        for (int k = 0; k < columns.size(); k++) {
            Column column = columns.get(k);
            int place = k;
            double[] whole = rows.stream()
                    .mapToDouble(row -> wholeMm(column, row.get(place)))
                    .sorted()
                    .toArray();
            sum += Math.max(headMm(column), usual(whole, aroundMm(column)));
        }
        return sum;
    }

    /** Of sorted widths that of nine in ten, empty cells apart. */
    private static double usual(double[] sorted, double emptyMm) {
        double[] written =
                Arrays.stream(sorted).filter(width -> width > emptyMm + 1e-9).toArray();
        return written.length == 0 ? 0 : written[(int) ((written.length - 1) * USUAL)];
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

    /**
     * Each width brought towards what it wants: those that lack least get all of it, the others as much as each other. A long
     * sentence takes one line more, so that short texts beside it stand on one.
     */
    private static double[] grown(double[] widths, double[] wanted, double roomMm) {
        double left = roomMm - Arrays.stream(widths).sum();
        double[] grown = widths.clone();
        int[] order = IntStream.range(0, widths.length)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> wanted[k] - widths[k]))
                .mapToInt(Integer::intValue)
                .toArray();
        for (int place = 0; place < order.length; place++) {
            int k = order[place];
            double more = Math.min(wanted[k] - widths[k], left / (order.length - place));
            grown[k] += Math.max(0, more);
            left -= Math.max(0, more);
        }
        return grown;
    }

    private static double[] widened(double[] widths, double roomMm) {
        double factor = Math.min(MOST_WIDENING, roomMm / Arrays.stream(widths).sum());
        return Arrays.stream(widths).map(width -> width * factor).toArray();
    }

    /** Room of a column that no text of it may take, mm. */
    static double aroundMm(Column column) {
        return 2 * PADDING_MM + (column.kind() == Column.Kind.NUMBER ? BEHIND_NUMBER_MM : 0);
    }

    private double headMm(Column column) {
        double head = 0;
        for (String part : column.head().split(BREAKS)) {
            head = Math.max(head, typesetter.widthMm(part, Weight.BOLD, heightMm));
        }
        double unit = typesetter.widthMm(column.unit(), Weight.REGULAR, heightMm);
        double hand = column.kind() == Column.Kind.BLANK ? HAND_MM : column.kind() == Column.Kind.TICK ? TICK_MM : 0;
        return Math.max(hand, Math.max(head, unit) + aroundMm(column));
    }

    private double wholeMm(Column column, Cell cell) {
        double text = 0;
        for (String line : cell.printed(column).split("\n")) {
            text = Math.max(text, typesetter.widthMm(line, TableSetting.weight(cell), heightMm));
        }
        return text + aroundMm(column) + (cell.colour().isPresent() ? SWATCH_MM : 0);
    }

    private double leastMm(Column column, Cell cell) {
        if (column.kind() != Column.Kind.WORDS) {
            return wholeMm(column, cell);
        }
        double word = typesetter.widestWordMm(cell.printed(column), TableSetting.weight(cell), heightMm);
        return Math.min(LONGEST_WORD_MM, word) + aroundMm(column);
    }
}
