package org.ohmloom.ground;

import org.ohmloom.model.Harness;

/** How far the ground of each kind of reference point may be from its reference. */
public final class OffsetLimits {

    private OffsetLimits() {}

    /**
     * The limit a point is judged by, V: of a control unit's ground {@code unitGroundVolts}, of any other ground {@code
     * groundVolts}, of a sensor return the same as of a control unit's ground, of a bus node what the table says.
     */
    public static double volts(Harness harness, ReferencePoint point) {
        return switch (point.kind()) {
            case UNIT_GROUND, SENSOR_RETURN -> harness.rules().returnRules().unitGroundLimitVolts();
            case GROUND_POINT, BUS_NODE_GROUND -> harness.rules().returnRules().groundLimitVolts();
        };
    }
}
