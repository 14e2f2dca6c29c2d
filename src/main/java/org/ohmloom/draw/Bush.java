package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.model.BreakoutId;

/**
 * What hangs on one side of a breakout, rows one below the other.
 *
 * @param at       the breakout
 * @param twigs    its rows from top to bottom
 * @param widthMm  width of all, mm
 * @param heightMm height of all, mm
 */
record Bush(BreakoutId at, List<Twig> twigs, double widthMm, double heightMm) {

    /** Space between two rows, mm. */
    static final double GAP_MM = 3;

    /** Rows moved one below the other. */
    static Bush of(BreakoutId at, List<Twig> rows) {
        List<Twig> twigs = new ArrayList<>();
        double y = 0;
        double width = 0;
        for (Twig row : rows) {
            y += twigs.isEmpty() ? 0 : GAP_MM;
            twigs.add(new Twig(
                    row.card(),
                    row.tie(),
                    row.beyond(),
                    row.runMm(),
                    y,
                    row.heightMm(),
                    y + row.lineMm() - row.topMm()));
            y += row.heightMm();
            width = Math.max(width, row.widthMm());
        }
        return new Bush(at, List.copyOf(twigs), width, y);
    }

    /** Where a line that comes in runs: half way between its first and its last row, mm below the top. */
    double middleMm() {
        return twigs.isEmpty()
                ? 0
                : (twigs.get(0).lineMm() + twigs.get(twigs.size() - 1).lineMm()) / 2;
    }
}
