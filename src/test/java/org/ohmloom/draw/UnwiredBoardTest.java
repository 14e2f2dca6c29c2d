package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;

/** A board that has its segments and no wire yet, as while a person draws. */
@BesideOthers
class UnwiredBoardTest {

    /** Half a line's width: what lies so near is drawn through. */
    private static final double NEAR_MM = 0.5;

    private static boolean isDrawnAt(Scene scene, double xMm, double yMm) {
        return scene.only(Set.of(Layer.BUNDLES)).hit(xMm, yMm, NEAR_MM).contains("B3");
    }

    /** The segments SG3, SG4 and SG5 leave the split B3 above each other. */
    @Test
    void segmentsMeetAtTheirBreakoutBeforeAnyWireGoesThere() {
        Harness teaching = ExamplesDrawTest.example("teaching");
        List<ElementId> wires =
                teaching.wires().all().stream().<ElementId>map(Wire::id).toList();
        Harness unwired = new TakeOut(wires).apply(teaching);
        Scene scene = ExamplesDrawTest.board(unwired, new SceneOptions(SceneOptions.Numbers.NONE, true));
        double x = scene.bounds("SG3").orElseThrow().leftMm();
        double top = scene.bounds("SG3").orElseThrow().centre().yMm();
        double bottom = scene.bounds("SG5").orElseThrow().centre().yMm();
        assertTrue(bottom - top > 10, "they lie apart: " + top + " and " + bottom);
        for (int k = 1; k < 10; k++) {
            double y = top + (bottom - top) * k / 10;
            assertTrue(isDrawnAt(scene, x, y), "nothing is drawn at " + x + ", " + y);
        }
    }
}
