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
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;

/** Draws a gauge: a tube over the whole scale, filled from the reference to the height, with a mark whose shape tells the kind. */
final class GaugeDrawing {

    private static final double TUBE_MM = 2.2;

    private final ReturnPlan plan;
    private final ReturnShelf shelf;
    private final Pen pen;

    GaugeDrawing(ReturnPlan plan, ReturnShelf shelf, Pen pen) {
        this.plan = plan;
        this.shelf = shelf;
        this.pen = pen;
    }

    void draw(Gauge gauge, double centre) {
        double level = shelf.y(gauge.volts());
        double base = shelf.y(0);
        put(
                Layer.BUNDLES,
                new Box(tube(centre, shelf.topMm(), shelf.bottomMm()), 0, Fill.of(Ink.COMPONENT, Ink.SOFT_TEXT, 0.2)),
                gauge);
        if (Math.abs(level - base) > 0.05) {
            put(
                    Layer.WIRES,
                    new Box(tube(centre, Math.min(level, base), Math.max(level, base)), 0, Fill.of(Ink.CHART_FIRST)),
                    gauge);
        }
        if (gauge.rippleVolts() > 0) {
            BasinDrawing.whisker(pen, shelf, gauge, centre + Math.min(3.6, plan.columnMm() / 2 - 1.2));
        }
        put(Layer.CONNECTORS, mark(gauge.kind(), new Point(centre, level)), gauge);
    }

    private static Extent tube(double centre, double from, double to) {
        return new Extent(centre - TUBE_MM / 2, from, centre + TUBE_MM / 2, to);
    }

    /** The mark of a kind: square, diamond or disc. */
    static Mark mark(Gauge.Kind kind, Point at) {
        Fill fill = Fill.of(Ink.PLATE, Ink.EARTH, 0.5);
        return switch (kind) {
            case UNIT_GROUND -> new Box(Extent.at(at.xMm() - 1.5, at.yMm() - 1.5, 3, 3), 0, fill);
            case BUS_NODE -> new Area(List.of(at.plus(0, -2), at.plus(2, 0), at.plus(0, 2), at.plus(-2, 0)), fill);
            case SENSOR_RETURN -> new Disc(at, 1.6, fill);
        };
    }

    private void put(Layer layer, Mark mark, Gauge gauge) {
        pen.put(layer, mark, Optional.of(gauge.element()), gauge.description());
    }
}
