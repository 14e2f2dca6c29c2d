package org.ohmloom.ground;

import org.ohmloom.graph.PointId;
import org.ohmloom.model.ElementId;
import org.ohmloom.words.Text;

/**
 * A place whose voltage matters, and the place it is measured against.
 *
 * @param kind      what it is
 * @param owner     the control unit, sensor or ground point it belongs to
 * @param at        where it is
 * @param reference what it is measured against: for a sensor return the sensor return of the control unit that reads it (its
 *                  ground where it has none), for a ground of a bus node the reference of the first unit on the bus, for every
 *                  other ground the negative terminal of the first source
 * @param against   the element the reference belongs to
 */
public record ReferencePoint(Kind kind, ElementId owner, PointId at, PointId reference, ElementId against) {

    /** What a reference point is. */
    public enum Kind {
        /** Ground pins of a control unit. */
        UNIT_GROUND,
        /** Return of a sensor. */
        SENSOR_RETURN,
        /** Ground of a control unit on a data bus. */
        BUS_NODE_GROUND,
        /** Wires stacked on a ground point. */
        GROUND_POINT
    }

    /** What it is called: "ground of ECU1", "return of TS1". */
    public Text words() {
        return switch (kind) {
            case UNIT_GROUND -> ReturnTexts.text("point.unit-ground", owner);
            case SENSOR_RETURN -> ReturnTexts.text("point.sensor-return", owner);
            case BUS_NODE_GROUND -> ReturnTexts.text("point.bus-node-ground", owner);
            case GROUND_POINT -> Text.of(owner);
        };
    }
}
