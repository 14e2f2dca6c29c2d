package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;

/**
 * A resistance entered between two ground points of one chassis body.
 *
 * @param from one ground point
 * @param to   the other
 * @param ohms resistance, ohm, more than 0
 */
public record ChassisPath(GroundPointId from, GroundPointId to, double ohms) {

    public ChassisPath {
        positive(ohms, "resistance of the chassis path from %s to %s", from, to);
    }
}
