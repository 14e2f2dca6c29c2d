package org.ohmloom.draw.chart;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.Weight;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/** Lays out a chart of signed bars: names at the left, bars in the middle, numbers in columns at the right. */
final class SignedLayout {

    private static final double ROW_MM = 5;
    private static final double BAR_MM = 3;
    private static final double GAP_MM = 1.2;
    private static final double EDGE_MM = 1.5;
    private static final double KEY_MM = 4.6;
    private static final double FOOT_MM = 11;
    private static final double LABEL_SHARE = 0.36;
    private static final double RING_MM = 3.4;

    /** Bars shorter than that tell nothing; the second numbers make room for them. */
    private static final double LEAST_PLOT_MM = 34;

    private static final double SECOND_GAP_MM = 2.5;

    /** The level is shown up to so many times the largest bar. */
    private static final double LEVEL_REACH = 3;

    private final SignedBars chart;
    private final Pen pen;
    private final double widthMm;
    private final double labelMm;
    private final double numberMm;
    private final double secondMm;
    private final Plot plot;

    SignedLayout(SignedBars chart, Pen pen, double widthMm) {
        this.chart = chart;
        this.pen = pen;
        this.widthMm = widthMm;
        double widest = chart.rows().stream()
                .mapToDouble(row -> pen.widthMm(row.label(), weight(row)))
                .max()
                .orElse(0);
        labelMm = Math.min(widthMm * LABEL_SHARE, widest + ringMm() + 0.5);
        numberMm = chart.rows().stream()
                .mapToDouble(row -> pen.widthMm(number(row), weight(row)))
                .max()
                .orElse(0);
        double left = EDGE_MM + labelMm + GAP_MM;
        double first = widthMm - EDGE_MM - numberMm - GAP_MM;
        double wanted = chart.second().isEmpty() ? 0 : secondMm();
        secondMm = first - wanted - SECOND_GAP_MM - left < LEAST_PLOT_MM ? 0 : wanted;
        double top = Pen.headingMm(chart.subtitle()) + KEY_MM + 1;
        double right = first - (secondMm > 0 ? secondMm + SECOND_GAP_MM : 0);
        Extent area = new Extent(left, top, right, top + chart.rows().size() * ROW_MM + 1);
        Axis across = across(area.widthMm());
        Axis none = new Axis(Text.NONE, Unit.FRACTION, 0, 1, false, List.of(new Tick(0, "")));
        plot = new Plot(area, across, none, Optional.empty(), 0);
    }

    private double secondMm() {
        double widest = chart.rows().stream()
                .flatMapToDouble(row -> row.second().stream())
                .map(value -> pen.widthMm(text(value)))
                .max()
                .orElse(0);
        return Math.max(widest, pen.widthMm(chart.second()));
    }

    static double heightMm(SignedBars chart) {
        return Pen.headingMm(chart.subtitle()) + KEY_MM + 1 + chart.rows().size() * ROW_MM + 1 + FOOT_MM;
    }

    private double ringMm() {
        return chart.ring() ? RING_MM : 0;
    }

    private Axis across(double roomMm) {
        double least = 0;
        double most = 0;
        for (SignedRow row : chart.rows()) {
            boolean both = row.kind() == SignedRow.Kind.SPAN;
            least = Math.min(
                    least,
                    both ? -row.value() : Math.min(row.value(), row.second().orElse(0)));
            most = Math.max(most, Math.max(row.value(), row.second().orElse(0)));
        }
        double reach = LEVEL_REACH * Math.max(most, -least);
        if (chart.allowed().isPresent() && chart.allowed().getAsDouble() <= reach) {
            double allowed = chart.allowed().getAsDouble();
            most = Math.max(most, allowed);
            least = least < 0 ? Math.min(least, -allowed) : least;
        }
        return Axes.plain(Text.joined(", ", List.of(chart.quantity(), Text.of(chart.unit()))), least, most, (int)
                Math.max(2, Math.min(8, roomMm / 16)));
    }

    Scene scene() {
        double heightMm = heightMm(chart);
        plot.draw(pen, new Extent(0, 0, widthMm, heightMm), chart.title(), chart.subtitle());
        key();
        double zero = plot.x(0);
        pen.line(
                Layer.BUNDLES,
                0.45,
                Ink.FRAME,
                LinePattern.CONTINUOUS,
                new Point(zero, plot.area().topMm()),
                new Point(zero, plot.area().bottomMm()));
        levels();
        for (int k = 0; k < chart.rows().size(); k++) {
            row(chart.rows().get(k), plot.area().topMm() + 0.5 + k * ROW_MM);
        }
        if (chart.ring() && chart.rows().size() > 1) {
            ring();
        }
        return new Scene(widthMm, heightMm, pen.items());
    }

    private static Weight weight(SignedRow row) {
        return row.kind() == SignedRow.Kind.SUM ? Weight.BOLD : Weight.REGULAR;
    }

    private String text(double value) {
        return Formats.number(value) + " " + chart.unit();
    }

    private String number(SignedRow row) {
        return (row.kind() == SignedRow.Kind.SPAN ? "± " : "") + text(row.value());
    }

    private static Fill fill(SignedRow.Kind kind) {
        return switch (kind) {
            case PART -> Fill.of(Ink.CHART_FIRST, Ink.CHART_FIRST, 0.3);
            case REST, SPAN -> Fill.of(Ink.CHART_BAND, Ink.CHART_FIRST, 0.3);
            case SUM -> Fill.of(Ink.EARTH, Ink.EARTH, 0.3);
            case STRAY -> Fill.of(Ink.CHART_SECOND, Ink.CHART_SECOND, 0.3);
        };
    }

    private void row(SignedRow row, double top) {
        double middle = top + ROW_MM / 2;
        double base = middle + Pen.LETTER_MM / 2;
        Optional<String> element = row.element();
        Text reading = Text.joined(": ", List.of(row.label(), Text.of(number(row))));
        Text description = row.second().isPresent()
                ? Text.joined(
                        ": ",
                        List.of(
                                Text.joined("; ", List.of(reading, chart.second())),
                                Text.of(text(row.second().getAsDouble()))))
                : reading;
        if (row.kind() == SignedRow.Kind.SUM) {
            pen.line(
                    Layer.ZONES,
                    0.25,
                    Ink.SOFT_TEXT,
                    LinePattern.CONTINUOUS,
                    new Point(EDGE_MM, top),
                    new Point(widthMm - EDGE_MM, top));
        }
        double mark = row.kind() == SignedRow.Kind.STRAY ? 2.4 : 0;
        String label = pen.cut(row.label(), Pen.LETTER_MM, weight(row), labelMm - ringMm() - mark);
        Point at = new Point(plot.area().leftMm() - GAP_MM, base);
        pen.put(
                Layer.SHEET,
                pen.text(label, at, Pen.LETTER_MM, Anchor.END, weight(row), Ink.TEXT),
                element,
                description);
        if (mark > 0) {
            double x = at.xMm() - pen.widthMm(label) - 1.4;
            pen.put(
                    Layer.SHEET,
                    new Area(
                            List.of(
                                    new Point(x - 0.9, base),
                                    new Point(x + 0.9, base),
                                    new Point(x, base - Pen.LETTER_MM + 0.1)),
                            Fill.of(Ink.CAUTION)));
        }
        bar(row, middle, description);
        Point right = new Point(plot.area().rightMm() + GAP_MM + numberMm, base);
        pen.put(
                Layer.NUMBERS,
                pen.text(number(row), right, Pen.LETTER_MM, Anchor.END, weight(row), Ink.TEXT),
                element,
                description);
        row.second().ifPresent(value -> {
            diamond(plot.x(value), middle, Layer.NUMBERS);
            if (secondMm > 0) {
                pen.put(
                        Layer.NUMBERS,
                        pen.text(text(value), new Point(widthMm - EDGE_MM, base), Anchor.END, Ink.TEXT),
                        element,
                        description);
            }
        });
    }

    private void bar(SignedRow row, double middle, Text description) {
        double from = row.kind() == SignedRow.Kind.SPAN ? plot.x(-row.value()) : plot.x(0);
        double to = plot.x(row.value());
        Extent extent = new Extent(
                Math.min(from, to),
                middle - BAR_MM / 2,
                Math.max(Math.max(from, to), Math.min(from, to) + 0.05),
                middle + BAR_MM / 2);
        pen.put(Layer.WIRES, new Box(extent, 0, fill(row.kind())), row.element(), description);
    }

    private void diamond(double x, double y, Layer layer) {
        pen.put(
                layer,
                new Area(
                        List.of(
                                new Point(x, y - 1.5),
                                new Point(x + 1.2, y),
                                new Point(x, y + 1.5),
                                new Point(x - 1.2, y)),
                        Fill.of(Ink.PLATE, Ink.FRAME, 0.35)));
    }

    private void levels() {
        chart.allowed().ifPresent(allowed -> DoubleStream.of(allowed, -allowed)
                .filter(this::isOnScale)
                .forEach(level -> pen.line(
                        Layer.CONNECTORS,
                        0.5,
                        Ink.CAUTION,
                        LinePattern.DASHED,
                        new Point(plot.x(level), plot.area().topMm()),
                        new Point(plot.x(level), plot.area().bottomMm()))));
    }

    private boolean isOnScale(double value) {
        return value >= plot.across().from() - 1e-12 && value <= plot.across().to() * (1 + 1e-9);
    }

    /** What the diamond and the dashed line mean. */
    private void key() {
        double base = plot.area().topMm() - 1.6;
        double x = EDGE_MM;
        OptionalDouble allowed = chart.allowed();
        if (allowed.isPresent()) {
            pen.line(
                    Layer.SHEET,
                    0.5,
                    Ink.CAUTION,
                    LinePattern.DASHED,
                    new Point(x, base - 1),
                    new Point(x + 6, base - 1));
            Text words = ChartTexts.text(
                    isOnScale(allowed.getAsDouble()) ? "allowed" : "allowed-beyond", text(allowed.getAsDouble()));
            x += 6 + GAP_MM;
            double room = widthMm - EDGE_MM - x - (chart.second().isEmpty() ? 0 : secondMm() + 6);
            String shown = pen.cut(words, Pen.LETTER_MM, Weight.REGULAR, room);
            pen.put(Layer.SHEET, pen.text(shown, new Point(x, base), Anchor.START, Ink.TEXT));
        }
        if (!chart.second().isEmpty()) {
            double right = widthMm - EDGE_MM;
            pen.put(Layer.SHEET, pen.text(chart.second(), new Point(right, base), Anchor.END, Ink.TEXT));
            diamond(right - pen.widthMm(chart.second()) - 2.2, base - 1, Layer.SHEET);
        }
    }

    /** The line from the last row back to the first. */
    private void ring() {
        double x = EDGE_MM + 0.6;
        double first = plot.area().topMm() + 0.5 + ROW_MM / 2;
        double last = first + (chart.rows().size() - 1) * ROW_MM;
        double to = EDGE_MM + RING_MM - 0.9;
        pen.put(
                Layer.SHEET,
                new Line(
                        List.of(new Point(to, last), new Point(x, last), new Point(x, first), new Point(to, first)),
                        0.3,
                        Ink.SOFT_TEXT,
                        LinePattern.CONTINUOUS));
        pen.put(
                Layer.SHEET,
                new Area(
                        List.of(
                                new Point(to + 0.4, first),
                                new Point(to - 1, first - 0.8),
                                new Point(to - 1, first + 0.8)),
                        Fill.of(Ink.SOFT_TEXT)));
    }
}
