package org.ohmloom.ground;

import org.ohmloom.model.Harness;

/** How far the ground of each kind of reference point may be from its reference. */
public final class OffsetLimits {

    private OffsetLimits() {}

    /**
     * The limit of a point, V: of a control unit's ground {@code unitGroundVolts}, of any other ground {@code groundVolts}. Sensor
     * returns and bus nodes are judged by what they do to the signal; here they have those limits too, to tell which offsets
     * are worth a closer look.
     */
    public static double volts(Harness harness, ReferencePoint point) {
        return switch (point.kind()) {
            case UNIT_GROUND, SENSOR_RETURN -> harness.rules().returnRules().unitGroundLimitVolts();
            case GROUND_POINT, BUS_NODE_GROUND -> harness.rules().returnRules().groundLimitVolts();
        };
    }
}
