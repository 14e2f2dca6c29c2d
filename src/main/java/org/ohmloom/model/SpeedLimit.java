package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;

/**
 * A point of an alternator's output curve.
 *
 * @param speedRpm  speed of its shaft, revolutions per minute, 0 or more
 * @param limitAmps most current it gives at that speed, A, 0 or more
 */
public record SpeedLimit(double speedRpm, double limitAmps) {

    public SpeedLimit {
        notNegative(speedRpm, "speed of an alternator");
        notNegative(limitAmps, "current limit of an alternator");
    }
}
