package org.ohmloom.draw.chart;

import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Weight;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** One row of a picture of returns: scale, reference, columns, and what is written below them. */
final class ReturnShelf {

    private static final double GAP_MM = 1.2;
    static final double REFERENCE_MM = 1.1;
    private static final double BESIDE_MM = 1.2;
    private static final double WARNING_MM = 2;

    private final ReturnPlan plan;
    private final Pen pen;
    private final List<ReturnColumn> columns;
    private final double top;
    private final double plotMm;
    private final double rightMm;

    ReturnShelf(ReturnPlan plan, Pen pen, int shelf, double topMm, double plotMm) {
        this.plan = plan;
        this.pen = pen;
        this.columns = plan.row(shelf);
        this.top = topMm + plan.aboveMm();
        this.plotMm = plotMm;
        this.rightMm = plan.leftMm() + plan.columnMm() * columns.size();
    }

    /** Where a voltage lies. */
    double y(double volts) {
        return top + plotMm * (1 - plan.upwards().fraction(volts));
    }

    double topMm() {
        return top;
    }

    double bottomMm() {
        return top + plotMm;
    }

    void draw() {
        grid();
        reference();
        for (int k = 0; k < columns.size(); k++) {
            ReturnColumn column = columns.get(k);
            if (column instanceof Basin basin) {
                new BasinDrawing(plan, this, pen).draw(basin, plan.centreMm(k));
            } else if (column instanceof Gauge gauge) {
                new GaugeDrawing(plan, this, pen).draw(gauge, plan.centreMm(k));
            }
            foot(column, plan.centreMm(k));
        }
        new ReturnLimits(plan, this, pen).draw(columns);
        groups();
    }

    private void grid() {
        double x = plan.leftMm() - GAP_MM;
        double heading = top - ReturnPlan.BASIN_MM - GAP_MM;
        pen.put(
                Layer.SHEET,
                pen.text(plan.upwards().heading(), new Point(GAP_MM + 0.3, heading), Anchor.START, Ink.TEXT));
        for (Tick tick : plan.upwards().ticks()) {
            double y = y(tick.value());
            pen.line(
                    Layer.ZONES,
                    Pen.GRID_MM,
                    Ink.RULE,
                    LinePattern.CONTINUOUS,
                    new Point(plan.leftMm(), y),
                    new Point(rightMm, y));
            Point at = new Point(x, y + Pen.LETTER_MM / 2);
            pen.put(Layer.SHEET, pen.text(tick.label(), at, Anchor.END, Ink.SOFT_TEXT));
        }
    }

    private void reference() {
        double y = y(0) + REFERENCE_MM / 2;
        String name = pen.cut(
                plan.picture().reference(),
                Pen.LETTER_MM,
                Weight.REGULAR,
                plan.widthMm() - plan.rightMm() - GAP_MM - 1.5);
        pen.line(
                Layer.BUNDLES,
                REFERENCE_MM,
                Ink.EARTH,
                LinePattern.CONTINUOUS,
                new Point(plan.leftMm(), y),
                new Point(rightMm, y));
        Point at = new Point(rightMm + GAP_MM, y + Pen.LETTER_MM / 2);
        pen.put(Layer.SHEET, pen.text(name, at, Anchor.START, Ink.TEXT));
    }

    private void foot(ReturnColumn column, double centre) {
        double room = plan.columnMm() - BESIDE_MM;
        double y = bottomMm() + plan.belowMm() + Pen.LETTER_MM;
        Optional<String> element = Optional.of(column.element());
        write(cut(column.label(), Weight.BOLD, room), centre, y, Weight.BOLD, Ink.TEXT, column, element);
        y += ReturnPlan.ROW_MM;
        String value = Formats.volts(column.volts());
        if (column.isOver()) {
            double wide = pen.widthMm(value, Weight.BOLD);
            write(value, centre + WARNING_MM / 2, y, Weight.BOLD, Ink.CAUTION, column, element);
            warning(centre - wide / 2 - WARNING_MM / 2, y);
        } else {
            write(value, centre, y, Weight.REGULAR, Ink.TEXT, column, element);
        }
        y += ReturnPlan.ROW_MM;
        write(
                cut(pen.said(column.second()), Weight.REGULAR, room),
                centre,
                y,
                Weight.REGULAR,
                Ink.TEXT,
                column,
                element);
        boolean names = plan.picture().columns().stream()
                .anyMatch(each -> !each.name().isEmpty() && !each.name().equals(each.label()));
        if (names) {
            y += ReturnPlan.ROW_MM;
            String name = column.name().equals(column.label()) ? "" : column.name();
            write(cut(name, Weight.REGULAR, room), centre, y, Weight.REGULAR, Ink.SOFT_TEXT, column, element);
        }
        if (!column.state().isEmpty()) {
            y += ReturnPlan.ROW_MM;
            write(cut(column.state(), Weight.REGULAR, room), centre, y, Weight.REGULAR, Ink.SOFT_TEXT, column, element);
        }
    }

    /** A triangle that stands before a value beyond its limit. */
    private void warning(double x, double base) {
        pen.put(
                Layer.NUMBERS,
                new Area(
                        List.of(
                                new Point(x - 0.9, base),
                                new Point(x + 0.9, base),
                                new Point(x, base - Pen.LETTER_MM + 0.1)),
                        Fill.of(Ink.CAUTION)));
    }

    private String cut(String text, Weight weight, double roomMm) {
        return pen.cut(text, Pen.LETTER_MM, weight, roomMm);
    }

    private void write(
            String text, double x, double y, Weight weight, Ink ink, ReturnColumn column, Optional<String> element) {
        if (!text.isEmpty()) {
            pen.put(
                    Layer.NUMBERS,
                    pen.text(text, new Point(x, y), Pen.LETTER_MM, Anchor.MIDDLE, weight, ink),
                    element,
                    column.description());
        }
    }

    /** Brackets below neighbours that share a heading. */
    private void groups() {
        double y = bottomMm() + plan.belowMm() + plan.footRows() * ReturnPlan.ROW_MM + 0.4;
        int from = 0;
        for (int k = 1; k <= columns.size(); k++) {
            if (k == columns.size()
                    || !columns.get(k).group().equals(columns.get(from).group())) {
                Text group = columns.get(from).group();
                if (!group.isEmpty()) {
                    double left = plan.leftMm() + from * plan.columnMm() + 0.8;
                    double right = plan.leftMm() + k * plan.columnMm() - 0.8;
                    pen.put(
                            Layer.BUNDLES,
                            new Line(
                                    List.of(
                                            new Point(left, y - 0.8),
                                            new Point(left, y),
                                            new Point(right, y),
                                            new Point(right, y - 0.8)),
                                    0.25,
                                    Ink.SOFT_TEXT,
                                    LinePattern.CONTINUOUS));
                    Point at = new Point((left + right) / 2, y + 1.2 + Pen.LETTER_MM);
                    String text = cut(pen.said(group), Weight.REGULAR, right - left);
                    pen.put(Layer.NUMBERS, pen.text(text, at, Anchor.MIDDLE, Ink.SOFT_TEXT));
                }
                from = k;
            }
        }
    }
}
