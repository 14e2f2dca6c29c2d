package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Weight;
import org.ohmloom.words.Text;

/** The limits of a row of a picture of returns: dashed over the columns they hold for, their values at the right. */
final class ReturnLimits {

    private static final double GAP_MM = 1.2;
    private static final double LINE_MM = 0.45;
    private static final double APART_MM = 3.1;

    private final ReturnPlan plan;
    private final ReturnShelf shelf;
    private final Pen pen;

    ReturnLimits(ReturnPlan plan, ReturnShelf shelf, Pen pen) {
        this.plan = plan;
        this.shelf = shelf;
        this.pen = pen;
    }

    void draw(List<ReturnColumn> columns) {
        double right = plan.leftMm() + plan.columnMm() * columns.size();
        // From the reference upwards, each text at its line or just above the one below it.
        double free = shelf.y(0) + ReturnShelf.REFERENCE_MM / 2 + Pen.LETTER_MM / 2 - APART_MM;
        for (double limit : ReturnPlan.limits(columns)) {
            boolean shown = ReturnPlan.isShown(limit, plan.upwards());
            if (shown) {
                runs(columns, limit).forEach(run -> line(run, limit));
                if (-limit >= plan.upwards().from() * (1 + 1e-9)) {
                    runs(columns, limit).forEach(run -> line(run, -limit));
                }
            }
            double wanted = shown ? shelf.y(limit) + Pen.LETTER_MM / 2 : shelf.topMm() - ReturnPlan.BASIN_MM / 2;
            double y = Math.min(free, wanted);
            Text text = ReturnPlan.limitText(limit, plan.upwards());
            double room = plan.widthMm() - right - GAP_MM - 1;
            pen.put(
                    Layer.SHEET,
                    pen.text(
                            pen.cut(text, Pen.LETTER_MM, Weight.REGULAR, room),
                            new Point(right + GAP_MM, y),
                            Anchor.START,
                            Ink.CAUTION));
            free = y - APART_MM;
        }
    }

    private void line(double[] run, double volts) {
        double y = shelf.y(volts);
        pen.line(Layer.NUMBERS, LINE_MM, Ink.CAUTION, LinePattern.DASHED, new Point(run[0], y), new Point(run[1], y));
    }

    /** Left and right ends of neighbouring columns with a limit, mm. */
    private List<double[]> runs(List<ReturnColumn> columns, double limit) {
        List<double[]> runs = new ArrayList<>();
        int from = -1;
        for (int k = 0; k <= columns.size(); k++) {
            boolean has = k < columns.size() && has(columns.get(k).limitVolts(), limit);
            if (has && from < 0) {
                from = k;
            } else if (!has && from >= 0) {
                runs.add(new double[] {
                    plan.leftMm() + from * plan.columnMm() + 0.6, plan.leftMm() + k * plan.columnMm() - 0.6
                });
                from = -1;
            }
        }
        return runs;
    }

    private static boolean has(OptionalDouble limit, double volts) {
        return limit.isPresent() && limit.getAsDouble() == volts;
    }
}
