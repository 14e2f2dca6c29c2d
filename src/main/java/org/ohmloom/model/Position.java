package org.ohmloom.model;

import static org.ohmloom.units.Require.finite;

/**
 * A position on the layout board.
 *
 * @param xMm to the right, mm
 * @param yMm downwards, mm
 */
public record Position(double xMm, double yMm) {

    public Position {
        finite(xMm, "x");
        finite(yMm, "y");
    }
}
