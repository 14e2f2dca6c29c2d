package org.ohmloom.draw.chart;

import java.util.List;
import java.util.Optional;
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
import org.ohmloom.words.Text;

/**
 * What is on when within the period of one clock: a lane for each output, a bar while it is on.
 *
 * @param title         what it shows
 * @param subtitle      under which conditions; may be empty
 * @param periodSeconds length of the period, s, more than 0
 * @param lanes         the outputs from the top
 */
public record ClockChart(Text title, Text subtitle, double periodSeconds, List<Lane> lanes) {

    private static final double LANE_MM = 5.6;
    private static final double GAP_MM = 1.2;
    private static final double LABEL_SHARE = 0.34;
    private static final double HEAD_MM = 9;
    private static final double SUBTITLE_MM = 4.2;
    private static final double FOOT_MM = 11;
    private static final double EDGE_MM = 1.5;

    /**
     * An output in it.
     *
     * @param label   its name
     * @param on      stretches it is on, as shares of the period from 0 to 1: begin, end
     * @param element id of the element it belongs to, for hit testing
     */
    public record Lane(Text label, List<OnTime> on, Optional<String> element) {
        public Lane {
            on = List.copyOf(on);
        }
    }

    /**
     * A time it is on.
     *
     * @param fromFraction begin, share of the period, 0 to 1
     * @param toFraction   end, share of the period, more than the begin, at most 1
     */
    public record OnTime(double fromFraction, double toFraction) {}

    public ClockChart {
        lanes = List.copyOf(lanes);
    }

    /** The height that shows every lane, mm. */
    public double heightMm() {
        return topMm() + lanes.size() * LANE_MM + FOOT_MM;
    }

    private double topMm() {
        return HEAD_MM + (subtitle.isEmpty() ? 0 : SUBTITLE_MM);
    }

    /** Lays the chart out in a width; its height follows from its lanes. */
    public Scene scene(SceneFonts fonts, double widthMm) {
        Pen pen = new Pen(fonts);
        double labelMm = Math.min(
                widthMm * LABEL_SHARE,
                lanes.stream()
                                .mapToDouble(lane -> pen.widthMm(lane.label()))
                                .max()
                                .orElse(0)
                        + GAP_MM);
        Axis across = Axes.linear(Dimension.TIME, 0, periodSeconds, (int) Math.max(2, Math.min(8, widthMm / 22)));
        Extent area =
                new Extent(EDGE_MM + labelMm + GAP_MM, topMm(), widthMm - 3 * EDGE_MM - GAP_MM, heightMm() - FOOT_MM);
        Axis left = new Axis(Text.NONE, Dimension.RATIO.canonicalUnit(), 0, 1, false, List.of(new Tick(0, "")));
        Plot plot = new Plot(area, across, left, Optional.empty(), 0);
        plot.draw(pen, new Extent(0, 0, widthMm, heightMm()), title, subtitle);
        double top = area.topMm();
        for (Lane lane : lanes) {
            lane(pen, plot, lane, top, labelMm);
            top += LANE_MM;
        }
        double end = plot.x(periodSeconds);
        pen.line(
                Layer.CONNECTORS,
                0.35,
                Ink.TEXT,
                LinePattern.DASHED,
                new Point(end, area.topMm()),
                new Point(end, area.bottomMm()));
        return new Scene(widthMm, heightMm(), pen.items());
    }

    private void lane(Pen pen, Plot plot, Lane lane, double top, double labelMm) {
        String label = pen.cut(lane.label(), Pen.LETTER_MM, Weight.REGULAR, labelMm);
        Point at = new Point(plot.area().leftMm() - GAP_MM, top + LANE_MM / 2 + Pen.LETTER_MM / 2);
        pen.put(Layer.SHEET, pen.text(label, at, Anchor.END, Ink.TEXT), lane.element(), lane.label());
        for (OnTime time : lane.on()) {
            Extent bar = new Extent(
                    plot.x(time.fromFraction() * periodSeconds),
                    top + 1,
                    plot.x(time.toFraction() * periodSeconds),
                    top + LANE_MM - 1);
            pen.put(
                    Layer.WIRES,
                    new Box(bar, 0, Fill.of(Ink.CHART_FIRST, Ink.CHART_FIRST, 0.35)),
                    lane.element(),
                    ChartTexts.text("is-on", lane.label()));
        }
    }
}
