package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A connector seen from the wire side with its pin table beside it; or a table alone.
 *
 * @param element  id of the connector; empty for a table alone
 * @param title    its id
 * @param name     its name and what it mates with
 * @param cells    its cavities in order with what is drawn in each; empty for a table alone
 * @param rows     lines of its table
 * @param heading  heading of the first column
 */
record ConnectorBlock(
        Optional<String> element, String title, String name, List<Cell> cells, List<PinRow> rows, String heading) {

    /** Width of a block, mm. */
    static final double WIDTH_MM = 168;

    /** Space below a block, mm. */
    static final double SPACE_BELOW_MM = 6;

    private static final double VIEW_MM = 42;
    private static final double ROW_MM = 4.4;
    private static final double TEXT_MM = SheetPen.SMALL_MM;
    private static final double HEAD_MM = 7;
    private static final double CELL_MM = 9;
    private static final double CAPTION_MM = 5;
    private static final List<String> HEADINGS = List.of("", "Wire", "Size", "Colour", "Circuit or signal", "Goes to");
    private static final List<Double> SHARES = List.of(0.11, 0.12, 0.14, 0.17, 0.27, 0.19);

    /**
     * One cavity in the view.
     *
     * @param name   name of the cavity
     * @param colour colour of the wire in it
     * @param used   whether a wire sits in it
     */
    record Cell(String name, Optional<org.ohmloom.model.WireColour> colour, boolean used) {}

    /** Height it takes with the space below it, mm. */
    double heightMm() {
        return HEAD_MM + Math.max((rows.size() + 1) * ROW_MM, viewHeightMm()) + SPACE_BELOW_MM;
    }

    /** Parts of it that are no higher than the room, mm; the view stands in the first. */
    List<ConnectorBlock> parts(double roomMm) {
        int most = Math.max(1, (int) Math.floor((roomMm - HEAD_MM - SPACE_BELOW_MM) / ROW_MM) - 1);
        List<ConnectorBlock> parts = new ArrayList<>();
        for (int from = 0; from == 0 || from < rows.size(); from += most) {
            List<PinRow> some = rows.subList(from, Math.min(rows.size(), from + most));
            boolean first = from == 0;
            parts.add(new ConnectorBlock(
                    element,
                    first ? title : title + " continued",
                    first ? name : "",
                    first ? cells : List.of(),
                    some,
                    heading));
        }
        return parts;
    }

    private int across() {
        int count = cells.size();
        int lines = count <= 3 ? 1 : count <= 16 ? 2 : count <= 36 ? 3 : 4;
        return Math.max(1, (count + lines - 1) / lines);
    }

    private double cellMm() {
        return Math.min(CELL_MM, (VIEW_MM - 4) / across());
    }

    private double viewHeightMm() {
        int lines = cells.isEmpty() ? 0 : (cells.size() + across() - 1) / across();
        return cells.isEmpty() ? 0 : lines * cellMm() + 3 + CAPTION_MM;
    }

    void draw(SheetPen pen, double left, double top) {
        pen.standingFor(element);
        double x = left;
        double base = top + 4;
        Text head = pen.lettering()
                .text(title, new Point(x, base), SheetPen.NORMAL_MM, Anchor.START, Weight.BOLD, Ink.TEXT);
        pen.mark(head);
        double after = x + head.widthMm() + 3;
        pen.text(name, after, base, 2.2, left + WIDTH_MM - after, Weight.REGULAR, Ink.TEXT);
        boolean alone = element.isEmpty();
        if (!cells.isEmpty()) {
            view(pen, left, top + HEAD_MM);
        }
        double tableLeft = alone ? left : left + VIEW_MM;
        table(pen, tableLeft, top + HEAD_MM, left + WIDTH_MM - tableLeft);
        pen.standingFor(Optional.empty());
    }

    private void view(SheetPen pen, double left, double top) {
        double cell = cellMm();
        int across = across();
        int lines = (cells.size() + across - 1) / across;
        Extent housing = Extent.at(left, top, across * cell + 3, lines * cell + 3);
        pen.mark(new Box(housing, 1.2, Fill.of(Ink.CONNECTOR, Ink.CONNECTOR_EDGE, SheetPen.MEDIUM_MM)));
        for (int k = 0; k < cells.size(); k++) {
            int line = k / across;
            double x = left + 1.5 + (k - line * across) * cell;
            double y = top + 1.5 + line * cell;
            cell(pen, cells.get(k), Extent.at(x, y, cell, cell).grown(-0.3));
        }
        double caption = housing.bottomMm() + 3;
        pen.text("wire side", left, caption, TEXT_MM, VIEW_MM - 2, Weight.REGULAR, Ink.SOFT_TEXT);
    }

    private static void cell(SheetPen pen, Cell cell, Extent place) {
        Ink inside = cell.used() ? Ink.PLATE : Ink.CONNECTOR;
        pen.box(place, Fill.of(inside, Ink.CONNECTOR_EDGE, SheetPen.THIN_MM));
        double high = Math.min(TEXT_MM, place.heightMm() * 0.5);
        boolean legible = high >= TEXT_MM - 1e-9
                && pen.lettering().widthMm(cell.name(), Weight.REGULAR, TEXT_MM) <= place.widthMm() - 0.4;
        Point middle = place.centre();
        if (legible) {
            double y = cell.colour().isPresent() ? middle.yMm() : middle.yMm() + TEXT_MM / 2;
            pen.centred(
                    cell.name(),
                    new Point(middle.xMm(), y),
                    TEXT_MM,
                    place.widthMm(),
                    Weight.REGULAR,
                    cell.used() ? Ink.TEXT : Ink.SOFT_TEXT);
        }
        double strip = place.heightMm() * 0.22;
        cell.colour()
                .ifPresent(colour -> pen.mark(new Swatch(
                        Extent.at(place.leftMm() + 0.8, place.bottomMm() - strip - 0.7, place.widthMm() - 1.6, strip),
                        colour)));
    }

    private void table(SheetPen pen, double left, double top, double width) {
        double y = top;
        pen.box(Extent.at(left, y, width, ROW_MM), Fill.of(Ink.TABLE_HEAD, Ink.FRAME, SheetPen.THIN_MM));
        double x = left;
        for (int k = 0; k < HEADINGS.size(); k++) {
            String text = k == 0 ? heading : HEADINGS.get(k);
            double room = SHARES.get(k) * width;
            pen.text(text, x + 1, y + 3.1, TEXT_MM, room - 2, Weight.BOLD, Ink.TEXT);
            x += room;
        }
        for (PinRow row : rows) {
            y += ROW_MM;
            row(pen, row, left, y, width);
        }
        double bottom = top + (rows.size() + 1) * ROW_MM;
        pen.box(new Extent(left, top, left + width, bottom), Fill.edge(Ink.FRAME, SheetPen.MEDIUM_MM));
    }

    private static void row(SheetPen pen, PinRow row, double left, double top, double width) {
        pen.line(SheetPen.THIN_MM, Ink.RULE, left, top, left + width, top);
        double base = top + 3.1;
        if (!row.note().isEmpty()) {
            pen.text(row.note(), left + 1, base, TEXT_MM, width - 2, Weight.REGULAR, Ink.SOFT_TEXT);
            return;
        }
        String[] cells = {row.at(), row.wire(), row.size(), "", row.use(), row.goesTo()};
        double x = left;
        for (int k = 0; k < cells.length; k++) {
            double room = SHARES.get(k) * width;
            if (k == 3) {
                if (row.colour().isPresent()) {
                    pen.colour(row.colour().get(), x + 1, base, TEXT_MM, room - 2);
                }
            } else {
                Weight weight = k == 0 ? Weight.BOLD : Weight.REGULAR;
                pen.text(cells[k], x + 1, base, TEXT_MM, room - 2, weight, Ink.TEXT);
            }
            x += room;
        }
    }
}
