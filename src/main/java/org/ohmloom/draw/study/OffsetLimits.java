package org.ohmloom.draw.study;

import java.util.OptionalDouble;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.ground.sensor.SensorBudget;
import org.ohmloom.model.Harness;

/** How far a reference point may be from its reference. */
public final class OffsetLimits {

    private OffsetLimits() {}

    /**
     * The limit of an offset, V: what the harness asks of the grounds of control units and of other grounds. For the return of a
     * sensor it is the offset that would use up the sensor's allowed error by itself, its error growing in proportion:
     * |offset| x allowed error / |error from the offset|. None for the ground of a bus node, which has wider limits of
     * its own.
     */
    public static OptionalDouble volts(Harness harness, ReturnStudy study, Offset offset) {
        return switch (offset.point().kind()) {
            case UNIT_GROUND -> OptionalDouble.of(harness.rules().returnRules().unitGroundLimitVolts());
            case GROUND_POINT -> OptionalDouble.of(harness.rules().returnRules().groundLimitVolts());
            case BUS_NODE_GROUND -> OptionalDouble.empty();
            case SENSOR_RETURN -> ofSensor(study, offset);
        };
    }

    private static OptionalDouble ofSensor(ReturnStudy study, Offset offset) {
        return study.sensors().stream()
                .filter(budget -> budget.sensor().equals(offset.point().owner())
                        && budget.state().equals(offset.state()))
                .flatMap(budget -> budget.known().stream()
                        .filter(part -> isFromOffset(part) && part.error() != 0 && offset.volts() != 0)
                        .map(part -> Math.abs(offset.volts() / part.error()) * budget.allowed()))
                .mapToDouble(Double::doubleValue)
                .min();
    }

    /** Whether a part of a budget comes from the offset of the sensor's return. */
    private static boolean isFromOffset(SensorBudget.ErrorPart part) {
        return part.name().equals("return offset");
    }
}
