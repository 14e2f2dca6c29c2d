package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A connector seen from the wire side with its pin table beside it; or a table alone.
 *
 * @param lettering what it is measured with
 * @param element  id of the connector; empty for a table alone
 * @param title    its id
 * @param name     its name and what it mates with
 * @param view     its cavities as they lie; empty for a table alone
 * @param rows     lines of its table
 * @param heading  heading of the first column
 */
record ConnectorBlock(
        Lettering lettering,
        Optional<String> element,
        String title,
        String name,
        Optional<CavityView> view,
        List<PinRow> rows,
        String heading)
        implements SheetBlock {

    private static final double VIEW_MM = 42;
    private static final double ROW_MM = 4.4;
    private static final double TEXT_MM = SheetPen.SMALL_MM;
    private static final double HEAD_MM = 7;

    /** A table alone is not begun for fewer rows. */
    private static final int FEWEST_ROWS = 8;

    private static final List<String> HEADINGS = List.of("", "Wire", "Size", "Colour", "Circuit or signal", "Goes to");
    private static final List<Double> SHARES = List.of(0.11, 0.12, 0.14, 0.17, 0.27, 0.19);

    @Override
    public String subject() {
        return "connectors";
    }

    @Override
    public double heightMm() {
        return HEAD_MM + Math.max((rows.size() + 1) * ROW_MM, viewHeightMm()) + SPACE_BELOW_MM;
    }

    /** The view stands in the first part; a table alone begins where there is room for some of it. */
    @Override
    public List<SheetBlock> parts(double firstMm, double roomMm) {
        int beginning = view.isEmpty() ? rowsIn(firstMm) : 0;
        List<SheetBlock> parts = new ArrayList<>();
        int to = 0;
        for (int from = 0; from == 0 || from < rows.size(); from = to) {
            boolean first = from == 0;
            to = Math.min(rows.size(), from + (first && beginning >= FEWEST_ROWS ? beginning : rowsIn(roomMm)));
            List<PinRow> some = rows.subList(from, to);
            parts.add(new ConnectorBlock(
                    lettering,
                    element,
                    first ? title : title + " continued",
                    first ? name : "",
                    first ? view : Optional.empty(),
                    some,
                    heading));
        }
        return parts;
    }

    private static int rowsIn(double roomMm) {
        return Math.max(1, (int) Math.floor((roomMm - HEAD_MM - SPACE_BELOW_MM) / ROW_MM) - 1);
    }

    private double viewHeightMm() {
        return view.map(each -> each.heightMm(lettering, VIEW_MM - 2)).orElse(0.0);
    }

    @Override
    public void draw(SheetPen pen, double left, double top) {
        pen.standingFor(element);
        double x = left;
        double base = top + 4;
        Text head = pen.lettering()
                .text(title, new Point(x, base), SheetPen.NORMAL_MM, Anchor.START, Weight.BOLD, Ink.TEXT);
        pen.mark(head);
        double after = x + head.widthMm() + 3;
        pen.text(name, after, base, 2.2, left + WIDTH_MM - after, Weight.REGULAR, Ink.TEXT);
        boolean alone = element.isEmpty();
        view.ifPresent(each -> each.draw(pen, left, top + HEAD_MM, VIEW_MM - 2));
        double tableLeft = alone ? left : left + VIEW_MM;
        table(pen, tableLeft, top + HEAD_MM, left + WIDTH_MM - tableLeft);
        pen.standingFor(Optional.empty());
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
