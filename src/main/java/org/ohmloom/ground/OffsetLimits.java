package org.ohmloom.ground;

import java.util.OptionalDouble;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.model.Harness;

/** How far the ground of each kind of reference point may be from its reference. */
public final class OffsetLimits {

    private static final double ROUNDING = 1e-9;

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

    /**
     * The limit an offset is judged by, V: grounds of control units and of other equipment are judged in the states that last, as
     * a workshop limit is measured with the equipment running; empty in the others.
     */
    public static OptionalDouble judged(Harness harness, Offset offset) {
        boolean always = offset.point().kind() == ReferencePoint.Kind.SENSOR_RETURN
                || offset.point().kind() == ReferencePoint.Kind.BUS_NODE_GROUND;
        return always || ContinuousStates.of(harness).contains(offset.state())
                ? OptionalDouble.of(volts(harness, offset.point()))
                : OptionalDouble.empty();
    }

    /** Whether an offset is beyond the limit it is judged by. */
    public static boolean isOver(Harness harness, Offset offset) {
        OptionalDouble limit = judged(harness, offset);
        return limit.isPresent() && offset.worstVolts() > limit.getAsDouble() * (1 + ROUNDING);
    }
}
