package org.ohmloom.workbench.drafting;

import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.ohmloom.edit.board.Arrangement;
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

    /** Steps of the grid that are one with Shift held. */
    private static final int FAR = 5;

    /** How near another thing must be level with a place to draw it, px. */
    static final double LEVEL_PX = 5;

    /** To begin with. */
    static final Grid USUAL = new Grid(true, 5);

    /**
     * A place after it was drawn to the grid or to other things.
     *
     * @param at     the place
     * @param guideX where it is level with another thing, board mm to the right
     * @param guideY the same downwards
     */
    record Snap(Position at, OptionalDouble guideX, OptionalDouble guideY) {

        /** A place that is level with nothing. */
        static Snap at(Position at) {
            return new Snap(at, OptionalDouble.empty(), OptionalDouble.empty());
        }
    }

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
            return Snap.at(Arrangement.rounded(at));
        }
        OptionalDouble x = level(at, others, reachMm, Position::xMm);
        OptionalDouble y = level(at, others, reachMm, Position::yMm);
        Position crossing = crossing(at);
        return new Snap(new Position(x.orElse(crossing.xMm()), y.orElse(crossing.yMm())), x, y);
    }

    /** A place after it was drawn to the grid alone. */
    Position crossing(Position at) {
        return on ? Arrangement.snapped(at, pitchMm) : Arrangement.rounded(at);
    }

    /**
     * How far one press of an arrow key moves, mm.
     *
     * @param far whether Shift is held
     */
    double stepMm(boolean far) {
        return (on ? pitchMm : 1) * (far ? FAR : 1);
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
}
