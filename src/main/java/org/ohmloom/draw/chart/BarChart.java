package org.ohmloom.draw.chart;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Weight;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Bars to the right, several to a row, with their numbers: on-state, RMS and mean current of a wire, say. The kinds
 * differ in how the bar is filled, outlined or tinted, and the key names them.
 *
 * @param title     what it shows
 * @param subtitle  under which conditions; may be empty
 * @param dimension what is measured
 * @param kinds     names of the kinds of values, one to four
 * @param limit     name of the level rows are held against; empty when no row has one
 * @param rows      rows from the top
 */
public record BarChart(
        Text title, Text subtitle, Dimension dimension, List<Text> kinds, Text limit, List<BarRow> rows) {

    private static final double BAR_MM = 3.1;
    private static final double BETWEEN_MM = 2.2;
    private static final double SAMPLE_MM = 5;
    private static final double GAP_MM = 1.2;
    private static final double LABEL_SHARE = 0.34;
    private static final double KEY_MM = 4.6;
    private static final double KEY_GAP_MM = 4;

    /** Limits are shown up to so many times the largest bar. */
    private static final double LIMIT_REACH = 3;

    private static final double HEAD_MM = 11.5;
    private static final double FOOT_MM = 11;
    private static final double EDGE_MM = 1.5;

    /** What the key keeps from the edge, so that sums of widths do not cut its last letter. */
    private static final double SLACK_MM = 0.1;

    public BarChart {
        kinds = List.copyOf(kinds);
        rows = List.copyOf(rows);
        for (BarRow row : rows) {
            if (row.values().size() != kinds.size()) {
                throw new IllegalArgumentException(
                        row.label() + " has " + row.values().size() + " values for " + kinds.size() + " kinds");
            }
        }
    }

    /** The height that shows every row, mm. */
    public double heightMm() {
        return HEAD_MM + subtitleMm() + FOOT_MM + rows.size() * (kinds.size() * BAR_MM + BETWEEN_MM);
    }

    private double subtitleMm() {
        return subtitle.isEmpty() ? 0 : 4.2;
    }

    /** Lays the chart out in a width; its height follows from its rows. */
    public Scene scene(SceneFonts fonts, double widthMm) {
        Pen pen = new Pen(fonts);
        double labelMm = Math.min(
                widthMm * LABEL_SHARE,
                rows.stream().mapToDouble(row -> pen.widthMm(row.label())).max().orElse(0) + GAP_MM);
        double numberMm = pen.widthMm("000.0 mA") + GAP_MM;
        Extent area = new Extent(
                EDGE_MM + labelMm + GAP_MM, HEAD_MM + subtitleMm(), widthMm - EDGE_MM - numberMm, heightMm() - FOOT_MM);
        double largest = rows.stream()
                .flatMap(row -> row.values().stream())
                .flatMapToDouble(OptionalDouble::stream)
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        // A limit far beyond every bar would leave nothing of the bars; it is not shown then.
        double most = rows.stream()
                .flatMapToDouble(row -> row.limit().stream())
                .filter(value -> value <= LIMIT_REACH * largest)
                .reduce(largest * area.widthMm() / (area.widthMm() - numberMm), Math::max);
        Axis across = Axes.linear(dimension, 0, most, (int) Math.max(2, Math.min(8, area.widthMm() / 18)));
        Axis left = new Axis(Text.NONE, dimension.canonicalUnit(), 0, 1, false, List.of(new Tick(0, "")));
        Plot plot = new Plot(area, across, left, Optional.empty(), 0);
        plot.draw(pen, new Extent(0, 0, widthMm, heightMm()), title, subtitle);
        key(
                pen,
                area.topMm() - KEY_MM,
                Math.max(EDGE_MM, Math.min(area.leftMm(), widthMm - EDGE_MM - SLACK_MM - keyMm(pen))),
                widthMm);
        double y = area.topMm() + BETWEEN_MM / 2;
        for (BarRow row : rows) {
            row(pen, plot, row, y, labelMm);
            y += kinds.size() * BAR_MM + BETWEEN_MM;
        }
        return new Scene(widthMm, heightMm(), pen.items());
    }

    private double keyMm(Pen pen) {
        double kindsMm = kinds.stream()
                .mapToDouble(kind -> SAMPLE_MM + GAP_MM + pen.widthMm(kind) + KEY_GAP_MM)
                .sum();
        return limit.isEmpty() ? kindsMm - KEY_GAP_MM : kindsMm + 1 + GAP_MM + pen.widthMm(limit);
    }

    private void key(Pen pen, double top, double from, double widthMm) {
        double x = from;
        for (int k = 0; k < kinds.size(); k++) {
            pen.put(Layer.SHEET, new Box(Extent.at(x, top + 0.3, SAMPLE_MM, BAR_MM - 0.4), 0, fill(k)));
            x += SAMPLE_MM + GAP_MM;
            pen.put(Layer.SHEET, pen.text(kinds.get(k), new Point(x, top + 2.3), Anchor.START, Ink.TEXT));
            x += pen.widthMm(kinds.get(k)) + KEY_GAP_MM;
        }
        if (!limit.isEmpty()) {
            limitMark(pen, Layer.SHEET, x + 1, top, top + BAR_MM);
            double left = x + 1 + GAP_MM;
            String cut = pen.cut(limit, Pen.LETTER_MM, Weight.REGULAR, widthMm - EDGE_MM - left);
            pen.put(Layer.SHEET, pen.text(cut, new Point(left, top + 2.3), Anchor.START, Ink.TEXT));
        }
    }

    private static Fill fill(int kind) {
        return switch (kind) {
            case 0 -> Fill.edge(Ink.CHART_FIRST, 0.35);
            case 1 -> Fill.of(Ink.CHART_FIRST, Ink.CHART_FIRST, 0.35);
            case 2 -> Fill.of(Ink.CHART_BAND, Ink.CHART_FIRST, 0.35);
            default -> Fill.of(Ink.CHART_SECOND, Ink.CHART_SECOND, 0.35);
        };
    }

    private static void limitMark(Pen pen, Layer layer, double x, double top, double bottom) {
        pen.line(layer, 0.6, Ink.CAUTION, LinePattern.CONTINUOUS, new Point(x, top), new Point(x, bottom));
    }

    private void row(Pen pen, Plot plot, BarRow row, double top, double labelMm) {
        double height = kinds.size() * BAR_MM;
        String label = pen.cut(row.label(), Pen.LETTER_MM, Weight.REGULAR, labelMm);
        Point at = new Point(plot.area().leftMm() - GAP_MM, top + height / 2 + Pen.LETTER_MM / 2);
        pen.put(Layer.SHEET, pen.text(label, at, Anchor.END, Ink.TEXT), row.element(), row.label());
        double limitX =
                row.limit().orElse(Double.POSITIVE_INFINITY) <= plot.across().to()
                        ? plot.x(row.limit().getAsDouble())
                        : Double.NaN;
        for (int k = 0; k < kinds.size(); k++) {
            if (row.values().get(k).isEmpty()) {
                continue;
            }
            double value = row.values().get(k).getAsDouble();
            double y = top + k * BAR_MM;
            double right = Math.max(plot.x(value), plot.area().leftMm() + 0.05);
            String number = Formats.quantity(value, dimension);
            pen.put(
                    Layer.WIRES,
                    new Box(new Extent(plot.area().leftMm(), y + 0.3, right, y + BAR_MM - 0.3), 0, fill(k)),
                    row.element(),
                    Text.joined(": ", List.of(Text.joined(", ", List.of(row.label(), kinds.get(k))), Text.of(number))));
            double start = right + GAP_MM;
            if (limitX > start - 0.6 && limitX < start + pen.widthMm(number) + 0.6) {
                start = limitX + GAP_MM;
            }
            pen.put(Layer.NUMBERS, pen.text(number, new Point(start, y + BAR_MM - 0.55), Anchor.START, Ink.TEXT));
        }
        if (!Double.isNaN(limitX)) {
            limitMark(pen, Layer.CONNECTORS, limitX, top, top + height);
        }
    }
}
