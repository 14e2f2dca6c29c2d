package org.ohmloom.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;

/** Edits that change where things return. */
class ReturnEditsTest {

    private static final WireId RETURN = new WireId("W1");
    private static final WireEnd G1 = new WireEnd.AtGround(new GroundPointId("G1"));
    private static final WireEnd G2 = new WireEnd.AtGround(new GroundPointId("G2"));

    private final Harness harness = new HarnessSketch()
            .body("FR")
            .ground("G1", "FR", 0.001)
            .ground("G2", "FR", 0.001)
            .load("L1", 5, 12)
            .load("L2", 5, 12)
            .bolt("L2", "-", "G1", 0.001)
            .wire("W1", "L1.-", "G1", 0.02)
            .harness();

    @Test
    void aMovedEndTakesItsNewLengthAndLosesTheResistanceMeasuredBefore() {
        MoveWireEnd edit = new MoveWireEnd(RETURN, G1, G2, OptionalDouble.of(1.5));
        Wire moved = edit.apply(harness).wires().get(RETURN);
        assertEquals("Move W1 from G1 to G2", edit.label().english());
        assertEquals(G2, moved.to());
        assertEquals(harness.wires().get(RETURN).from(), moved.from());
        assertEquals(OptionalDouble.of(1.5), moved.lengthMetres());
        assertEquals(OptionalDouble.empty(), moved.measuredOhms());
        assertSame(harness, new MoveWireEnd(RETURN, G2, G1, OptionalDouble.empty()).apply(harness));
    }

    @Test
    void aCaseIsBoltedElsewhereWithItsJointOrInsulated() {
        ComponentId load = new ComponentId("L2");
        MoveCaseGround moved = new MoveCaseGround(load, Optional.of(new GroundPointId("G2")));
        assertEquals("Bolt L2 to G2", moved.label().english());
        assertEquals(
                0.001,
                moved.apply(harness)
                        .components()
                        .get(load)
                        .caseGround()
                        .orElseThrow()
                        .jointOhms());
        MoveCaseGround insulated = new MoveCaseGround(load, Optional.empty());
        assertEquals(
                Optional.empty(),
                insulated.apply(harness).components().get(load).caseGround());
        assertSame(harness, new MoveCaseGround(load, Optional.of(new GroundPointId("G1"))).apply(harness));
    }

    @Test
    void aWireTakenOutComesBackByUndo() {
        Session session = new Session(harness, Optional.empty());
        session.apply(new RemoveWires(List.of(RETURN)));
        assertFalse(session.current().wires().has(RETURN));
        session.undo();
        assertSame(harness, session.current());
    }
}
