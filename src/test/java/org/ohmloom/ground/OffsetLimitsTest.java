package org.ohmloom.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.PointId;
import org.ohmloom.ground.ReferencePoint.Kind;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;

/** Workshop limits of grounds: 0.05 V for control units, 0.10 V for other equipment, with the equipment running. */
class OffsetLimitsTest {

    private static final Harness HARNESS = new HarnessSketch()
            .battery("BAT1", 12, 0.01)
            .with(state("RUN", OperatingState.EngineMode.IDLING))
            .with(state("CRANK", OperatingState.EngineMode.CRANKING))
            .harness();

    private static OperatingState state(String id, OperatingState.EngineMode mode) {
        return new OperatingState(
                new StateId(id), id, mode, new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), OptionalDouble.empty());
    }

    private static Offset offset(Kind kind, String state, double volts, double rippleVolts) {
        ReferencePoint point = new ReferencePoint(
                kind, new ComponentId("U1"), new PointId("a"), new PointId("b"), new ComponentId("BAT1"));
        return new Offset(point, new StateId(state), volts, rippleVolts, List.of());
    }

    @Test
    void aControlUnitMayBeHalfAsFarOffAsOtherEquipment() {
        assertEquals(OptionalDouble.of(0.05), OffsetLimits.judged(HARNESS, offset(Kind.UNIT_GROUND, "RUN", 0, 0)));
        assertEquals(OptionalDouble.of(0.10), OffsetLimits.judged(HARNESS, offset(Kind.GROUND_POINT, "RUN", 0, 0)));
    }

    @Test
    void ripplesCountAndTheSignDoesNot() {
        assertFalse(OffsetLimits.isOver(HARNESS, offset(Kind.UNIT_GROUND, "RUN", -0.03, 0.02)), "0.05 V, the limit");
        assertTrue(OffsetLimits.isOver(HARNESS, offset(Kind.UNIT_GROUND, "RUN", -0.03, 0.021)));
        assertFalse(OffsetLimits.isOver(HARNESS, offset(Kind.GROUND_POINT, "RUN", -0.03, 0.021)));
    }

    @Test
    void crankingIsNotJudgedExceptForWhatASignalGoesBy() {
        assertFalse(OffsetLimits.isOver(HARNESS, offset(Kind.UNIT_GROUND, "CRANK", 1, 0)));
        assertFalse(OffsetLimits.isOver(HARNESS, offset(Kind.GROUND_POINT, "CRANK", 1, 0)));
        assertTrue(OffsetLimits.isOver(HARNESS, offset(Kind.SENSOR_RETURN, "CRANK", 0.06, 0)));
        assertFalse(OffsetLimits.isOver(HARNESS, offset(Kind.BUS_NODE_GROUND, "CRANK", 0.06, 0)), "0.10 V allowed");
        assertTrue(OffsetLimits.isOver(HARNESS, offset(Kind.BUS_NODE_GROUND, "CRANK", 0.11, 0)));
    }

    @Test
    void aPointSaysWhatItIs() {
        assertEquals(
                List.of("ground of U1", "return of U1", "ground of bus node U1", "U1"),
                List.of(Kind.UNIT_GROUND, Kind.SENSOR_RETURN, Kind.BUS_NODE_GROUND, Kind.GROUND_POINT).stream()
                        .map(kind -> offset(kind, "RUN", 0, 0).point().words().english())
                        .toList());
    }
}
