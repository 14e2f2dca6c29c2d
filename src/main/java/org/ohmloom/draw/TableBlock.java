package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A table of a sheet whose cells take as many lines as they need.
 *
 * @param lettering what it is measured with
 * @param title     its heading
 * @param about     what it tells, beside the heading
 * @param columns   its columns
 * @param rows      its rows
 */
record TableBlock(Lettering lettering, String title, String about, List<Column> columns, List<Row> rows)
        implements SheetBlock {

    private static final double HEAD_MM = 7;
    private static final double PAD_MM = 1;
    private static final double TEXT_MM = SheetPen.SMALL_MM;
    private static final double LINE_MM = TEXT_MM * SheetPen.LINE_RATIO;
    private static final double ROW_EXTRA_MM = 4.4 - LINE_MM;

    /**
     * A column.
     *
     * @param head  its heading
     * @param share share of the width
     * @param right whether its texts stand at the right side, as numbers do
     */
    record Column(String head, double share, boolean right) {}

    /**
     * A row.
     *
     * @param element id of the element it tells about
     * @param cells   its texts
     */
    record Row(Optional<String> element, List<String> cells) {}

    TableBlock {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    @Override
    public String subject() {
        return "dimensions";
    }

    @Override
    public double heightMm() {
        return HEAD_MM + headMm() + rows.stream().mapToDouble(this::rowMm).sum() + SPACE_BELOW_MM;
    }

    private double headMm() {
        return LINE_MM + ROW_EXTRA_MM;
    }

    private double rowMm(Row row) {
        int lines = 1;
        for (int k = 0; k < columns.size(); k++) {
            lines = Math.max(lines, lines(row, k).size());
        }
        return lines * LINE_MM + ROW_EXTRA_MM;
    }

    private List<String> lines(Row row, int column) {
        double room = columns.get(column).share() * WIDTH_MM - 2 * PAD_MM;
        String text = row.cells().get(column);
        return text.isEmpty()
                ? Collections.emptyList()
                : lettering.wrapped(text, Weight.REGULAR, TEXT_MM, room, Integer.MAX_VALUE);
    }

    @Override
    public List<SheetBlock> parts(double firstMm, double roomMm) {
        List<SheetBlock> parts = new ArrayList<>();
        double fixed = HEAD_MM + headMm();
        double room = firstMm;
        List<Row> some = new ArrayList<>();
        double high = fixed;
        for (Row row : rows) {
            double next = rowMm(row);
            boolean none = some.isEmpty() && (parts.isEmpty() && room < roomMm);
            if (high + next > room && (!some.isEmpty() || none)) {
                if (!some.isEmpty()) {
                    parts.add(part(parts, some));
                }
                room = roomMm;
                some = new ArrayList<>();
                high = fixed;
            }
            some.add(row);
            high += next;
        }
        if (!some.isEmpty()) {
            parts.add(part(parts, some));
        }
        return parts;
    }

    private TableBlock part(List<SheetBlock> before, List<Row> some) {
        return new TableBlock(lettering, before.isEmpty() ? title : title + ", continued", about, columns, some);
    }

    @Override
    public void draw(SheetPen pen, double left, double top) {
        Text head = lettering.text(
                title, new Point(left, top + 4), SheetPen.NORMAL_MM, Anchor.START, Weight.BOLD, Ink.TEXT);
        pen.mark(head);
        double after = left + head.widthMm() + 3;
        pen.text(about, after, top + 4, 2.2, left + WIDTH_MM - after, Weight.REGULAR, Ink.SOFT_TEXT);
        double y = top + HEAD_MM;
        pen.box(Extent.at(left, y, WIDTH_MM, headMm()), Fill.of(Ink.TABLE_HEAD, Ink.FRAME, SheetPen.THIN_MM));
        double x = left;
        for (Column column : columns) {
            cell(pen, column, column.head(), x, y, Weight.BOLD);
            x += column.share() * WIDTH_MM;
        }
        y += headMm();
        for (Row row : rows) {
            row(pen, row, left, y);
            y += rowMm(row);
        }
        pen.box(new Extent(left, top + HEAD_MM, left + WIDTH_MM, y), Fill.edge(Ink.FRAME, SheetPen.MEDIUM_MM));
    }

    private void row(SheetPen pen, Row row, double left, double top) {
        pen.line(SheetPen.THIN_MM, Ink.RULE, left, top, left + WIDTH_MM, top);
        pen.standingFor(row.element());
        double x = left;
        for (int k = 0; k < columns.size(); k++) {
            double y = top;
            for (String line : lines(row, k)) {
                cell(pen, columns.get(k), line, x, y, k == 0 ? Weight.BOLD : Weight.REGULAR);
                y += LINE_MM;
            }
            x += columns.get(k).share() * WIDTH_MM;
        }
        pen.standingFor(Optional.empty());
    }

    private void cell(SheetPen pen, Column column, String text, double left, double top, Weight weight) {
        if (text.isEmpty()) {
            return;
        }
        double room = column.share() * WIDTH_MM - 2 * PAD_MM;
        double x = column.right() ? left + column.share() * WIDTH_MM - PAD_MM : left + PAD_MM;
        Anchor anchor = column.right() ? Anchor.END : Anchor.START;
        pen.mark(lettering.fitted(text, new Point(x, top + 3.1), TEXT_MM, room, anchor, weight, Ink.TEXT));
    }
}
