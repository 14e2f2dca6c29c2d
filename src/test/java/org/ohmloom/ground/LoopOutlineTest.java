package org.ohmloom.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.ReturnLoop;
import org.ohmloom.graph.ReturnLoops;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;

/** The outline of a loop on the layout board, worked by hand: corners in millimetres, and wires longer than drawn widen it. */
@BesideOthers
class LoopOutlineTest {

    private static final double EXACT = 1e-9;

    /** Two straps of a body and a wire to a third ground; the places make a triangle of 3 m x 4 m. */
    private static final Map<String, Position> TRIANGLE =
            Map.of("A", new Position(0, 0), "B", new Position(3000, 0), "C", new Position(0, 4000));

    private static Optional<LoopOutline.Outline> outline(HarnessSketch sketch, Map<String, Position> layout) {
        Harness harness = sketch.harness().withLayout(new TreeMap<>(layout));
        Network network = sketch.network();
        ReturnLoop loop = ReturnLoops.of(network).loops().get(0);
        List<Branch> branches = loop.members().stream()
                .map(member -> network.branch(member).orElseThrow())
                .toList();
        return new LoopOutline(harness, Routes.of(harness)).of(loop, branches);
    }

    private static HarnessSketch straps() {
        return new HarnessSketch()
                .segment("T1", "A", "B", 3)
                .segment("T2", "B", "C", 5)
                .battery("BAT1", 12, 0.01)
                .body("FRAME")
                .body("ENGINE")
                .body("BOX")
                .ground("G1", "FRAME", 0.001)
                .ground("G2", "ENGINE", 0.001)
                .ground("G3", "BOX", 0.001)
                .at("G1", "A")
                .at("G2", "B")
                .at("G3", "C")
                .wire("W0", "BAT1.-", "G1", 0.01);
    }

    @Test
    void strapsGoStraightFromGroundToGround() {
        HarnessSketch three = straps().strap("ST1", "G1", "G2", 0.001)
                .strap("ST2", "G2", "G3", 0.001)
                .strap("ST3", "G3", "G1", 0.001);
        LoopOutline.Outline outline = outline(three, TRIANGLE).orElseThrow();
        assertEquals(3.0 * 4 / 2, outline.squareMetres(), EXACT);
    }

    @Test
    void withoutAPositionOfEveryPlaceThereIsNoOutline() {
        HarnessSketch three = straps().strap("ST1", "G1", "G2", 0.001)
                .strap("ST2", "G2", "G3", 0.001)
                .strap("ST3", "G3", "G1", 0.001);
        assertEquals(Optional.empty(), outline(three, Map.of("A", new Position(0, 0), "B", new Position(3000, 0))));
    }

    @Test
    void aSpliceAlongASegmentIsACornerWhereItLies() {
        // 4 m along the 5 m from B (3, 0) to C (0, 4), at (0.6, 3.2), and on by C: on the side of the triangle, so its
        // area stays
        HarnessSketch spliced = straps().segment("T3", "A", "C", 4)
                .splice("S1", 0.0001)
                .along("S1", "T2", 4)
                .strap("ST1", "G1", "G2", 0.001)
                .wire("W1", "G2", "S1", 0.01)
                .wire("W2", "S1", "G1", 0.01);
        LoopOutline.Outline outline = outline(spliced, TRIANGLE).orElseThrow();
        assertEquals(6, outline.squareMetres(), EXACT);
        assertTrue(outline.how().english().startsWith("outline over 4 places"), outline.how()::english);
    }
}
