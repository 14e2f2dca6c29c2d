package org.ohmloom.draw.chart;

import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;

/** Draws a ground point: the way from the reference up to its height, and the basin with the terminals of its stud on top. */
final class BasinDrawing {

    /** Terminals a stud may hold: a row of dots. */
    private static final int IN_A_ROW = 4;

    private static final int MOST_DOTS = 2 * IN_A_ROW;
    private static final double DOT_MM = 0.55;
    private static final double PITCH_MM = 1.5;
    private static final double ARROW_MM = 1.3;
    private static final double LEAST_FOR_ARROW_MM = 4;

    private final ReturnPlan plan;
    private final ReturnShelf shelf;
    private final Pen pen;

    BasinDrawing(ReturnPlan plan, ReturnShelf shelf, Pen pen) {
        this.plan = plan;
        this.shelf = shelf;
        this.pen = pen;
    }

    void draw(Basin basin, double centre) {
        double floor = shelf.y(basin.volts());
        double base = shelf.y(0);
        way(basin, centre, floor, base);
        ripple(basin, centre);
        // Below the reference it stands on its head, so that its closed side is always at its height.
        double out = basin.volts() < 0 ? 1 : -1;
        double half = plan.basinMm() / 2;
        List<Point> corners = List.of(
                new Point(centre - half, floor + out * ReturnPlan.BASIN_MM),
                new Point(centre - half * 0.7, floor),
                new Point(centre + half * 0.7, floor),
                new Point(centre + half, floor + out * ReturnPlan.BASIN_MM));
        put(Layer.WIRES, new Area(corners, Fill.of(Ink.COMPONENT)), basin);
        put(Layer.WIRES, new Line(corners, 0.6, Ink.EARTH, LinePattern.CONTINUOUS), basin);
        dots(basin, centre, floor, out);
    }

    private void way(Basin basin, double centre, double floor, double base) {
        double width = plan.wayMm(basin.amps());
        if (Math.abs(floor - base) < 0.05) {
            return;
        }
        if (width == 0) {
            put(
                    Layer.BUNDLES,
                    new Line(
                            List.of(new Point(centre, floor), new Point(centre, base)),
                            0.3,
                            Ink.RETURN,
                            LinePattern.DOTTED),
                    basin);
            return;
        }
        double joint = floor + (base - floor) * basin.jointFraction();
        box(basin, centre, width, joint, base, Fill.of(Ink.CHART_BAND, Ink.RETURN, 0.25));
        if (Math.abs(joint - floor) > 0.05) {
            box(basin, centre, width, floor, joint, Fill.of(Ink.RETURN, Ink.RETURN, 0.25));
        }
        if (Math.abs(base - floor) > LEAST_FOR_ARROW_MM && basin.amps() != 0) {
            // It points the way the current takes: to the reference, or from it.
            double towards = Math.signum(base - floor) * Math.signum(basin.amps());
            double y = (floor + base) / 2;
            put(
                    Layer.BUNDLES,
                    new Area(
                            List.of(
                                    new Point(centre - ARROW_MM, y - towards * ARROW_MM * 0.8),
                                    new Point(centre + ARROW_MM, y - towards * ARROW_MM * 0.8),
                                    new Point(centre, y + towards * ARROW_MM * 0.8)),
                            Fill.of(Ink.PLATE, Ink.EARTH, 0.25)),
                    basin);
        }
    }

    private void box(Basin basin, double centre, double width, double from, double to, Fill fill) {
        Extent extent = new Extent(centre - width / 2, Math.min(from, to), centre + width / 2, Math.max(from, to));
        put(Layer.BUNDLES, new Box(extent, 0, fill), basin);
    }

    /** How far the height swings: a whisker beside the way. */
    private void ripple(Basin basin, double centre) {
        if (basin.rippleVolts() > 0) {
            double x = centre + Math.min(plan.columnMm() / 2 - 1.2, plan.basinMm() / 2 + 0.8);
            whisker(pen, shelf, basin, x);
        }
    }

    static void whisker(Pen pen, ReturnShelf shelf, ReturnColumn column, double x) {
        double from = shelf.y(column.volts() + column.rippleVolts());
        double to = shelf.y(column.volts() - column.rippleVolts());
        Optional<String> element = Optional.of(column.element());
        for (double y : new double[] {from, to}) {
            pen.put(
                    Layer.CONNECTORS,
                    Line.of(0.35, Ink.TEXT, new Point(x - 0.8, y), new Point(x + 0.8, y)),
                    element,
                    column.description());
        }
        if (to - from > 0.02) {
            pen.put(
                    Layer.CONNECTORS,
                    Line.of(0.35, Ink.TEXT, new Point(x, from), new Point(x, to)),
                    element,
                    column.description());
        }
    }

    private void dots(Basin basin, double centre, double floor, double out) {
        int shown = Math.min(MOST_DOTS, basin.terminals());
        double pitch = Math.min(PITCH_MM, plan.basinMm() * 0.6 / IN_A_ROW);
        for (int k = 0; k < shown; k++) {
            int row = k / IN_A_ROW;
            int inRow = Math.min(IN_A_ROW, shown - row * IN_A_ROW);
            double x = centre + (k % IN_A_ROW - (inRow - 1) / 2.0) * pitch;
            double y = floor + out * (1.3 + row * PITCH_MM);
            // What is too many is hollow as well as of another colour.
            Fill fill = k < basin.most() ? Fill.of(Ink.EARTH) : Fill.edge(Ink.CAUTION, 0.3);
            put(Layer.CONNECTORS, new Disc(new Point(x, y), DOT_MM, fill), basin);
        }
    }

    private void put(Layer layer, Mark mark, Basin basin) {
        pen.put(layer, mark, Optional.of(basin.element()), basin.description());
    }
}
