package org.ohmloom.draw.wiring;

import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Point;

/**
 * A stretch of a circuit on a sheet.
 *
 * @param strip     the stretch
 * @param sheet     number of the sheet, from 1
 * @param placement from the circuit's own measure to the sheet's
 */
record PlacedStrip(Strip strip, int sheet, Placement placement) {

    Point of(double xMm, double yMm) {
        return placement.of(new Point(xMm, yMm));
    }
}
