package org.ohmloom.draw;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.WireId;

/**
 * The line of a wire before every wire has its own place: level stretches with a breakout between each two.
 *
 * @param wire   the wire
 * @param levels level stretches in order, one more than breakouts
 * @param passed breakouts passed
 */
record Trace(WireId wire, List<Level> levels, List<BreakoutId> passed) {

    private static final double SAME_LEVEL_MM = 0.01;

    /**
     * A level stretch.
     *
     * @param key id of what it runs in: a segment, a connector, a component, a splice or a ground point
     * @param yMm where the middle of that runs, mm
     * @param xMm where the wire begins or ends there, mm; empty between two breakouts
     */
    record Level(String key, double yMm, Optional<Double> xMm) {}

    Trace {
        levels = List.copyOf(levels);
        passed = List.copyOf(passed);
    }

    /** Whether it goes up or down at the breakout of a number. */
    boolean turns(int number) {
        return Math.abs(levels.get(number).yMm() - levels.get(number + 1).yMm()) > SAME_LEVEL_MM;
    }
}
