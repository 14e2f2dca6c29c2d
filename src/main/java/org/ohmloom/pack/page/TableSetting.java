package org.ohmloom.pack.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Swatch;
import org.ohmloom.draw.Weight;

/**
 * Tables made ready for pages: their head, and their rows as pieces. Columns without a single entry are left out, but
 * for those to be written in by hand.
 */
final class TableSetting {
    /** Heights of the capitals tried, mm: reading size, then the smallest of the ISO 3098 series. */
    private static final List<Double> HEIGHTS_MM = List.of(2.0, 1.8);

    private static final double ABOVE_MM = 1.15;
    private static final double BELOW_MM = 0.65;
    private static final double RULE_MM = 0.13;
    private static final double HEAVY_MM = 0.25;

    /** Room between a table and its continuation beside it, mm. */
    static final double BESIDE_MM = 6;

    /** A narrow table of so many rows goes on beside itself, at most so often. */
    private static final int FEWEST_BESIDE = 8, MOST_ACROSS = 3;

    /** Least height of a row that is written in by hand, mm. */
    private static final double HAND_MM = 6;

    /** Least height of a row with a box to tick, and the side of the box, mm. */
    private static final double TICKED_MM = 4.8, BOX_MM = 3;

    private final Typesetter typesetter;
    private final List<Column> columns;
    private final int[] places;
    private final double[] widths;
    private final double heightMm;
    private final Piece head;
    private final int across;

    /** A setting for tables of the same columns, so that they line up with each other; at least one. */
    TableSetting(Typesetter typesetter, List<Block.Table> tables, double roomMm) {
        this.typesetter = typesetter;
        List<Column> all = tables.get(0).columns();
        this.places = IntStream.range(0, all.size())
                .filter(k -> isPrinted(all.get(k), tables, k))
                .toArray();
        this.columns = IntStream.of(places).mapToObj(all::get).toList();
        List<List<Cell>> rows = tables.stream()
                .flatMap(table -> table.rows().stream())
                .filter(row -> row.kind() != Row.Kind.GROUP)
                .map(this::printed)
                .toList();
        double chosen = HEIGHTS_MM.get(HEIGHTS_MM.size() - 1);
        double[] found = null;
        for (double height : HEIGHTS_MM) {
            found = new ColumnWidths(typesetter, height)
                    .of(columns, rows, roomMm)
                    .orElse(null);
            if (found != null) {
                chosen = height;
                break;
            }
        }
        this.across = tables.stream().anyMatch(table -> table.rows().size() >= FEWEST_BESIDE)
                ? across(new ColumnWidths(typesetter, chosen), rows, roomMm)
                : 1;
        if (across > 1) {
            double each = (roomMm - (across - 1) * BESIDE_MM) / across;
            found = new ColumnWidths(typesetter, chosen).of(columns, rows, each).orElse(found);
        }
        this.heightMm = chosen;
        this.widths = found != null ? found : new ColumnWidths(typesetter, chosen).forced(columns, rows, roomMm);
        this.head = makeHead();
    }

    /** How often the table stands beside itself where all its cells stand on few lines then too. */
    private int across(ColumnWidths setting, List<List<Cell>> rows, double roomMm) {
        for (int count = MOST_ACROSS; count > 1; count--) {
            double each = (roomMm - (count - 1) * BESIDE_MM) / count;
            if (setting.usualMm(columns, rows) <= each
                    && setting.of(columns, rows, each).isPresent()) {
                return count;
            }
        }
        return 1;
    }

    /** How many columns of the table stand side by side, from the top to the bottom of each. */
    int across() {
        return across;
    }

    /** From the left side of one column to the next, mm. */
    double stepMm() {
        return widthMm() + BESIDE_MM;
    }

    static Weight weight(Cell cell) {
        return cell.tone() == Cell.Tone.STRONG || cell.tone() == Cell.Tone.ALERT ? Weight.BOLD : Weight.REGULAR;
    }

    /** The head, repeated on every page. */
    Piece head() {
        return head;
    }

    /**
     * A row as pieces none of which is higher than a limit; one piece unless the row is higher than a whole page.
     *
     * @param banded whether it has a light ground
     */
    List<Piece> row(Row row, boolean banded, double mostMm) {
        if (row.kind() == Row.Kind.GROUP) {
            return List.of(group(row.cells().get(0)));
        }
        List<Cell> cells = printed(row);
        List<List<String>> lines = new ArrayList<>();
        for (int k = 0; k < cells.size(); k++) {
            lines.add(lines(columns.get(k), cells.get(k), widths[k]));
        }
        int most = lines.stream().mapToInt(List::size).max().orElse(1);
        int atOnce = Math.max(1, (int) ((mostMm - ABOVE_MM - BELOW_MM) / pitchMm()));
        List<Piece> pieces = new ArrayList<>();
        for (int from = 0; from < most; from += atOnce) {
            int first = from;
            int last = Math.min(most, from + atOnce);
            List<List<String>> part = lines.stream()
                    .map(each -> each.subList(Math.min(first, each.size()), Math.min(last, each.size())))
                    .toList();
            pieces.add(rowPiece(row, cells, part, last - first, banded));
        }
        return pieces;
    }

    private double widthMm() {
        return IntStream.range(0, widths.length).mapToDouble(k -> widths[k]).sum();
    }

    private double pitchMm() {
        return heightMm * Typesetter.PITCH;
    }

    private double rowHeightMm(int lines) {
        return ABOVE_MM + lines * pitchMm() - (Typesetter.PITCH - 1) * heightMm + BELOW_MM + 0.3 * heightMm;
    }

    private static boolean isPrinted(Column column, List<Block.Table> tables, int place) {
        return column.printed() && (column.isByHand() || tables.stream().anyMatch(table -> hasEntry(table, place)));
    }

    private static boolean hasEntry(Block.Table table, int column) {
        return table.items().stream()
                .map(row -> row.cells().get(column))
                .anyMatch(cell -> !cell.text().isEmpty() || cell.number().isPresent());
    }

    private List<Cell> printed(Row row) {
        return IntStream.of(places).mapToObj(row.cells()::get).toList();
    }

    private List<String> lines(Column column, Cell cell, double widthMm) {
        double room =
                widthMm - ColumnWidths.aroundMm(column) - (cell.colour().isPresent() ? ColumnWidths.SWATCH_MM : 0);
        return typesetter.lines(cell.printed(column), weight(cell), heightMm, room);
    }

    private Piece makeHead() {
        List<List<String>> lines = new ArrayList<>();
        for (int k = 0; k < columns.size(); k++) {
            double room = widths[k] - ColumnWidths.aroundMm(columns.get(k));
            lines.add(typesetter.lines(columns.get(k).head(), Weight.BOLD, heightMm, room));
        }
        int most = 1;
        for (int k = 0; k < columns.size(); k++) {
            most = Math.max(most, lines.get(k).size() + unitLines(columns.get(k)));
        }
        double height = rowHeightMm(most);
        List<Mark> marks = new ArrayList<>();
        marks.add(new Box(Extent.at(0, 0, widthMm(), height), 0, Fill.of(Ink.TABLE_HEAD)));
        double left = 0;
        for (int k = 0; k < columns.size(); k++) {
            Column column = columns.get(k);
            List<String> words = lines.get(k);
            int first = most - unitLines(column) - words.size();
            for (int line = 0; line < words.size(); line++) {
                marks.add(word(column, words.get(line), left, widths[k], first + line, Weight.BOLD, Ink.TEXT, 0));
            }
            if (!column.unit().isEmpty()) {
                marks.add(word(column, column.unit(), left, widths[k], most - 1, Weight.REGULAR, Ink.SOFT_TEXT, 0));
            }
            left += widths[k];
        }
        marks.add(across(0, HEAVY_MM, Ink.FRAME));
        marks.add(across(height, HEAVY_MM, Ink.FRAME));
        return new Piece(height, marks);
    }

    private static int unitLines(Column column) {
        return column.unit().isEmpty() ? 0 : 1;
    }

    private Piece group(Cell cell) {
        double room = widthMm() - 2 * ColumnWidths.PADDING_MM;
        List<String> lines = typesetter.lines(cell.text(), Weight.BOLD, heightMm, room);
        double above = 1.4;
        List<Mark> marks = new ArrayList<>();
        for (int line = 0; line < lines.size(); line++) {
            marks.add(typesetter.text(
                    lines.get(line),
                    ColumnWidths.PADDING_MM,
                    above + baseMm(line),
                    heightMm,
                    Anchor.START,
                    Weight.BOLD,
                    Ink.TEXT));
        }
        double height = above + rowHeightMm(lines.size());
        marks.add(across(height, RULE_MM, Ink.FRAME));
        return new Piece(height, marks);
    }

    private Piece rowPiece(Row row, List<Cell> cells, List<List<String>> lines, int most, boolean banded) {
        double byHand =
                columns.stream().mapToDouble(TableSetting::byHandMm).max().orElse(0);
        double height = Math.max(byHand, rowHeightMm(most));
        double downMm = (height - rowHeightMm(most)) / 2;
        List<Mark> marks = new ArrayList<>();
        List<Mention> mentions = new ArrayList<>();
        if (banded) {
            marks.add(new Box(Extent.at(0, 0, widthMm(), height), 0, Fill.of(Ink.COMPONENT)));
        }
        double left = 0;
        for (int k = 0; k < cells.size(); k++) {
            Cell cell = cells.get(k);
            double indent = left;
            if (columns.get(k).kind() == Column.Kind.BLANK) {
                marks.add(upright(left, height));
                marks.add(upright(left + widths[k], height));
            }
            if (columns.get(k).kind() == Column.Kind.TICK) {
                double x = left + (widths[k] - BOX_MM) / 2;
                marks.add(
                        new Box(Extent.at(x, (height - BOX_MM) / 2, BOX_MM, BOX_MM), 0, Fill.edge(Ink.FRAME, RULE_MM)));
            }
            if (cell.colour().isPresent() && !lines.get(k).isEmpty()) {
                Extent place = Extent.at(left + ColumnWidths.PADDING_MM, downMm + ABOVE_MM, 5, heightMm);
                marks.add(new Swatch(place, cell.colour().get()));
                indent += ColumnWidths.SWATCH_MM;
            }
            Weight weight = row.kind() == Row.Kind.TOTAL ? Weight.BOLD : weight(cell);
            for (int line = 0; line < lines.get(k).size(); line++) {
                String text = lines.get(k).get(line);
                if (!text.isEmpty()) {
                    marks.add(word(columns.get(k), text, indent, widths[k], line, weight, ink(cell), downMm));
                }
            }
            if (columns.get(k).naming() != Column.Naming.NONE && !cell.text().isEmpty()) {
                boolean home = columns.get(k).naming() == Column.Naming.HOME;
                mentions.add(new Mention(0, Extent.at(left, 0, widths[k], height), cell.text(), home));
            }
            left += widths[k];
        }
        if (row.kind() == Row.Kind.TOTAL) {
            marks.add(across(0, HEAVY_MM, Ink.FRAME));
        }
        marks.add(across(height, RULE_MM, Ink.RULE));
        return new Piece(height, marks, mentions);
    }

    private static double byHandMm(Column column) {
        return column.kind() == Column.Kind.BLANK ? HAND_MM : column.kind() == Column.Kind.TICK ? TICKED_MM : 0;
    }

    private Mark word(
            Column column,
            String text,
            double leftMm,
            double widthMm,
            int line,
            Weight weight,
            Ink ink,
            double downMm) {
        boolean right = column.kind() == Column.Kind.NUMBER;
        double x = right
                ? leftMm + widthMm - ColumnWidths.PADDING_MM - ColumnWidths.BEHIND_NUMBER_MM
                : leftMm + ColumnWidths.PADDING_MM;
        return typesetter.text(
                text, x, downMm + baseMm(line), heightMm, right ? Anchor.END : Anchor.START, weight, ink);
    }

    private double baseMm(int line) {
        return ABOVE_MM + heightMm + line * pitchMm();
    }

    private Line across(double yMm, double widthMm, Ink ink) {
        return Line.of(widthMm, ink, new Point(0, yMm), new Point(widthMm(), yMm));
    }

    private static Line upright(double xMm, double heightMm) {
        return Line.of(RULE_MM, Ink.RULE, new Point(xMm, 0), new Point(xMm, heightMm));
    }

    private static Ink ink(Cell cell) {
        return switch (cell.tone()) {
            case PLAIN, STRONG -> Ink.TEXT;
            case SOFT -> Ink.SOFT_TEXT;
            case ALERT -> Ink.CAUTION;
        };
    }
}
