package org.ohmloom.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.SpliceId;

/** Conductors, contacts and joints of a harness as points and branches. */
class NetworkBuilderTest {

    static Branch branch(Network network, String id) {
        return network.branch(new BranchId(id)).orElseThrow(() -> new AssertionError("no branch " + id));
    }

    static String ends(Network network, String id) {
        Branch branch = branch(network, id);
        return branch.from() + " to " + branch.to();
    }

    static Set<String> ids(Network network) {
        return network.all().stream().map(branch -> branch.id().value()).collect(Collectors.toCollection(TreeSet::new));
    }

    private static HarnessSketch lampOnOneFuse() {
        return new HarnessSketch()
                .battery("BAT1", 12.6, 0.01)
                .fuse("F1", 10, 0.008)
                .load("L1", 2, 12)
                .contact("CT", 0.005)
                .connector("X1", "L1", "1 + CT", "2 - CT")
                .wire("W1", "BAT1.+", "F1.1", 0.02)
                .wire("W2", "F1.2", "X1.1", 0.03)
                .wire("W3", "X1.2", "BAT1.-", 0.04);
    }

    @Test
    void aResistanceNoConductorHasCountsAsATrillionthOfAnOhm() {
        Network network = lampOnOneFuse()
                .wire("W4", "F1.2", "X1.1", 1e-320)
                .contact("CT", 5e-324)
                .network();
        assertEquals(new Law.Resistance(1e-12), branch(network, "W4").law());
        assertEquals(new Law.Resistance(1e-12), branch(network, "X1.1").law());
        assertEquals(new Law.Resistance(0.03), branch(network, "W2").law());
    }

    @Test
    void aLampOnOneFuseIsOneCircuitOfEightBranches() {
        Network network = lampOnOneFuse().network();
        // battery, fuse, lamp, two contacts, three wires
        assertEquals(Set.of("BAT1", "F1", "L1", "X1.1", "X1.2", "W1", "W2", "W3"), ids(network));
        assertEquals("BAT1.- to BAT1.+", ends(network, "BAT1"));
        assertEquals("BAT1.+ to F1.1", ends(network, "W1"));
        assertEquals("X1.1 to L1.+", ends(network, "X1.1"));
        assertEquals("L1.+ to L1.-", ends(network, "L1"));
        assertEquals(new Law.Resistance(0.005), branch(network, "X1.2").law());
        assertEquals(new Law.Resistance(6), branch(network, "L1").law());
        assertEquals(Optional.of(new PointId("BAT1.-")), network.datum());
    }

    @Test
    void aContactWithoutResistanceMakesCavityAndTerminalOnePointNamedAfterTheTerminal() {
        Network network = lampOnOneFuse().contact("CT", 0).network();
        assertEquals("F1.2 to L1.+", ends(network, "W2"));
        assertFalse(network.points().contains(new PointId("X1.1")));
        assertEquals(Optional.of(new PointId("L1.+")), network.index().at("X1.1"));
    }

    @Test
    void anInlinePairIsOneContactPerPairOfWiredCavities() {
        Network network = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .load("L1", 2, 12)
                .contact("CT", 0.004)
                .inline("X10", "X2", "a CT", "b CT", "spare CT")
                .wire("W1", "BAT1.+", "X10.a", 0.1)
                .wire("W2", "X2.a", "L1.+", 0.1)
                .wire("W3", "L1.-", "X2.b", 0.1)
                .wire("W4", "X10.b", "BAT1.-", 0.1)
                .network();
        // X2 comes before X10 in natural order and has no contact of its own: X10's counts
        assertEquals("X2.a to X10.a", ends(network, "X2.a~X10.a"));
        assertEquals(new Law.Resistance(0.004), branch(network, "X2.b~X10.b").law());
        assertFalse(ids(network).contains("X2.spare~X10.spare"));
    }

    @Test
    void wiresInASpliceWithJointResistanceEachHaveAJoint() {
        HarnessSketch sketch = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .load("L1", 2, 12)
                .splice("S1", 0.001)
                .wire("W1", "BAT1.+", "S1", 0.1)
                .wire("W2", "S1", "L1.+", 0.1)
                .wire("W3", "S1", "S1", 0.1);
        Network network = sketch.network();
        assertEquals("BAT1.+ to S1.W1", ends(network, "W1"));
        assertEquals("S1.W1 to S1", ends(network, "S1.W1"));
        assertEquals("S1.W2 to L1.+", ends(network, "W2"));
        assertEquals("S1.W3.from to S1.W3.to", ends(network, "W3"));
        assertEquals(BranchKind.JOINT, branch(network, "S1.W2").kind());
        assertEquals(Optional.of(new PointId("S1")), network.index().splice(new SpliceId("S1")));

        Network merged = sketch.splice("S1", 0).network();
        assertEquals("BAT1.+ to S1", ends(merged, "W1"));
        // W3 would go from S1 to S1: it is left out, and that is said
        assertFalse(ids(merged).contains("W3"));
        assertTrue(merged.assumptions().stream().anyMatch(each -> each.text().contains("Both ends of W3")));
    }

    @Test
    void aLooseEndIsAPointOfItsOwn() {
        Network network = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .wire("W1", "BAT1.+", "loose", 0.1)
                .wire("W2", "loose", "loose", 0.1, SignalClass.SHIELD, OptionalDouble.empty(), OptionalDouble.empty())
                .network();
        assertEquals("BAT1.+ to W1.to", ends(network, "W1"));
        assertEquals("W2.from to W2.to", ends(network, "W2"));
        assertEquals(BranchKind.SHIELD, branch(network, "W2").kind());
    }

    @Test
    void groundPointsStackTheirWiresBeforeOneJoint() {
        Network network = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .load("L1", 2, 12)
                .load("L2", 2, 12)
                .body("FRAME", 0.002)
                .ground("G1", "FRAME", 0.001)
                .ground("G2", "FRAME", 0)
                .bolt("L2", "-", "G1", 0.003)
                .wire("W1", "L1.-", "G1", 0.1)
                .wire("W2", "BAT1.-", "G2", 0.1)
                .network();
        assertEquals("G1 to G1.body", ends(network, "G1.joint"));
        assertEquals("L2.- to G1", ends(network, "L2.-@G1"));
        assertEquals("G1.body to FRAME", ends(network, "FRAME.G1"));
        // G2 has no joint resistance: stack and body are one point, named after the stack
        assertEquals("G2 to FRAME", ends(network, "FRAME.G2"));
        assertEquals("BAT1.- to G2", ends(network, "W2"));
        assertEquals(Optional.of(new PointId("G2")), network.index().groundBody(new GroundPointId("G2")));
        // the rule's source is said
        assertTrue(network.assumptions().stream().anyMatch(each -> each.source().equals("invented for a test")));
    }

    @Test
    void aPresentCurrentGoesFromTheFarEndOfAFeedBackToTheFirstSource() {
        HarnessSketch sketch = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .splice("S1", 0)
                .splice("S2", 0)
                .wire("W1", "BAT1.+", "S1", 0.1, SignalClass.FEED, OptionalDouble.empty(), OptionalDouble.of(5))
                .wire("W2", "S2", "BAT1.-", 0.1, SignalClass.RETURN, OptionalDouble.empty(), OptionalDouble.of(4));
        Network network = sketch.network();
        // 5 A leave W1 at S1; 4 A enter W2 at S2 and arrive at the battery through it
        assertEquals("S1 to BAT1.-", ends(network, "W1.present"));
        assertEquals("BAT1.+ to S2", ends(network, "W2.present"));
        assertEquals(new Law.FixedCurrent(5), branch(network, "W1.present").law());
        Network off = sketch.network(HarnessSketch.state().withSource(new ComponentId("BAT1"), false));
        assertEquals(new Law.Open(), branch(off, "W1.present").law());
        assertEquals(new Law.Open(), branch(off, "BAT1").law());
    }

    @Test
    void theDatumIsTheFirstSourceInNaturalOrderEvenWhenOff() {
        Network network = new HarnessSketch()
                .battery("BAT10", 12, 0.01)
                .battery("BAT2", 12, 0.01)
                .network(HarnessSketch.state().withSource(new ComponentId("BAT2"), false));
        assertEquals(Optional.of(new PointId("BAT2.-")), network.datum());
        assertEquals(
                Optional.empty(),
                new HarnessSketch().load("L1", 1, 12).network().datum());
    }
}
