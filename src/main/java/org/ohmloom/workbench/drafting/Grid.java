package org.ohmloom.workbench.drafting;

import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.ohmloom.model.Position;

/**
 * The grid of the board, and how a place is drawn to it.
 *
 * @param on      whether places are drawn to it and its crossings are shown
 * @param pitchMm distance of its lines, mm, more than 0
 */
record Grid(boolean on, double pitchMm) {

    /** Distances of the lines to choose from, mm. */
    static final List<Double> PITCHES_MM = List.of(1.0, 2.5, 5.0, 10.0, 20.0);

    /** To begin with. */
    static final Grid USUAL = new Grid(true, 5);

    /**
     * A place after it was drawn to the grid or to other things.
     *
     * @param at     the place
     * @param guideX where it is level with another thing, board mm to the right
     * @param guideY the same downwards
     */
    record Snap(Position at, OptionalDouble guideX, OptionalDouble guideY) {}

    Grid switched() {
        return new Grid(!on, pitchMm);
    }

    /**
     * Draws a place to where other things stand level with it, otherwise to the grid.
     *
     * @param others  places of other things
     * @param reachMm how near another thing must be level with it, mm
     * @param free    whether nothing is to draw it
     */
    Snap snap(Position at, Collection<Position> others, double reachMm, boolean free) {
        if (free || !on) {
            return new Snap(
                    new Position(tenth(at.xMm()), tenth(at.yMm())), OptionalDouble.empty(), OptionalDouble.empty());
        }
        OptionalDouble x = level(at, others, reachMm, Position::xMm);
        OptionalDouble y = level(at, others, reachMm, Position::yMm);
        return new Snap(new Position(x.orElse(crossing(at.xMm())), y.orElse(crossing(at.yMm()))), x, y);
    }

    /** How far one press of an arrow key moves, mm. */
    double stepMm() {
        return on ? pitchMm : 1;
    }

    private double crossing(double mm) {
        return tenth(pitchMm * Math.round(mm / pitchMm));
    }

    private static OptionalDouble level(
            Position at, Collection<Position> others, double reachMm, ToDoubleFunction<Position> axis) {
        double here = axis.applyAsDouble(at);
        double best = Double.NaN;
        for (Position other : others) {
            double there = axis.applyAsDouble(other);
            double off = Math.abs(there - here);
            if (off <= reachMm && (Double.isNaN(best) || off < Math.abs(best - here))) {
                best = there;
            }
        }
        return Double.isNaN(best) ? OptionalDouble.empty() : OptionalDouble.of(best);
    }

    private static double tenth(double mm) {
        return Math.round(mm * 10) / 10.0 + 0.0;
    }
}
