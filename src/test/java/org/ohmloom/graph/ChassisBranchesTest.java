package org.ohmloom.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.ohmloom.graph.NetworkBuilderTest.ends;
import static org.ohmloom.graph.NetworkBuilderTest.ids;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A chassis body between its ground points, by entered paths, by rule, by both and by neither. */
class ChassisBranchesTest {

    private static HarnessSketch fourGrounds(HarnessSketch sketch) {
        for (int k = 1; k <= 4; k++) {
            sketch.ground("G" + k, "FRAME", 0.001);
        }
        return sketch;
    }

    @Test
    void withNeitherPathNorRuleTheBodyIsOnePointAndThatIsSaid() {
        Network network = fourGrounds(new HarnessSketch().body("FRAME")).network();
        assertEquals(Set.of("G1.joint", "G2.joint", "G3.joint", "G4.joint"), ids(network));
        assertEquals("G4 to FRAME", ends(network, "G4.joint"));
        Assumption assumption = network.assumptions().get(0);
        assertEquals(
                "No resistance is entered in chassis body FRAME between G1, G2, G3, G4: taken as 0 Ω.",
                assumption.text());
        assertEquals(Assumption.COMMON_PRACTICE, assumption.source());
    }

    @Test
    void withARuleEveryGroundPointGoesToTheMiddle() {
        Network network = fourGrounds(new HarnessSketch().body("FRAME", 0.002)).network();
        assertEquals("G3.body to FRAME", ends(network, "FRAME.G3"));
        assertEquals(8, network.branches().size());
    }

    @Test
    void pathsAndRuleTogetherKeepTheBodyWhole() {
        // G1 and G2 hang together by a path: the first of them, G1, and the lone G3 and G4 go to the middle
        Network network = fourGrounds(new HarnessSketch().body("FRAME", 0.002))
                .path("FRAME", "G2", "G1", 0.0005)
                .network();
        assertEquals("G2.body to G1.body", ends(network, "FRAME.G2-G1"));
        assertTrue(ids(network).containsAll(Set.of("FRAME.G1", "FRAME.G3", "FRAME.G4")));
        assertTrue(!ids(network).contains("FRAME.G2"));
        assertEquals(1, Islands.of(network).all().size());
    }

    @Test
    void pathsThatReachEveryGroundPointNeedNoMiddle() {
        Network network = fourGrounds(new HarnessSketch().body("FRAME", 0.002))
                .path("FRAME", "G1", "G2", 0.0005)
                .path("FRAME", "G2", "G3", 0.0005)
                .path("FRAME", "G3", "G4", 0.0005)
                .path("FRAME", "G3", "G4", 0.0009)
                .network();
        assertTrue(!network.points().contains(new PointId("FRAME")));
        // a second path between the same two points is numbered
        assertEquals("G3.body to G4.body", ends(network, "FRAME.G3-G4/2"));
        assertEquals(1, Islands.of(network).all().size());
    }

    @Test
    void aStrapJoinsTheBodiesBesideTheStacks() {
        Network network = new HarnessSketch()
                .body("FRAME")
                .body("ENGINE")
                .ground("G1", "FRAME", 0.001)
                .ground("G2", "ENGINE", 0.001)
                .strap("BS1", "G1", "G2", 0.0003)
                .network();
        assertEquals("FRAME to ENGINE", ends(network, "BS1"));
        assertEquals(Optional.of(new PointId("ENGINE")), network.index().at("G2.body"));
        assertTrue(network.assumptions().isEmpty());
    }
}
