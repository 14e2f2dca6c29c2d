package org.ohmloom.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Switch;

/** Loops of the return network, each told by its members in order. */
@BesideOthers
class ReturnLoopsTest {

    private static List<String> loops(HarnessSketch sketch) {
        Network network = sketch.network();
        List<ReturnLoop> loops = ReturnLoops.of(network).loops();
        loops.forEach(loop -> assertHangsTogether(network, loop));
        return loops.stream()
                .map(loop -> String.join(
                        " ", loop.members().stream().map(BranchId::value).toList()))
                .toList();
    }

    /** Point k joins member k-1 and member k. */
    private static void assertHangsTogether(Network network, ReturnLoop loop) {
        int count = loop.members().size();
        assertEquals(count, loop.points().size());
        for (int k = 0; k < count; k++) {
            Branch branch = network.branch(loop.members().get(k)).orElseThrow();
            Set<PointId> ends = Set.of(branch.from(), branch.to());
            assertEquals(ends, Set.of(loop.points().get(k), loop.points().get((k + 1) % count)));
        }
    }

    private static HarnessSketch twoLamps() {
        return new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .load("L1", 1, 12)
                .load("L2", 1, 12)
                .splice("S1", 0)
                .wire("W1", "BAT1.+", "L1.+", 0.1)
                .wire("W2", "BAT1.+", "L2.+", 0.1)
                .wire("W3", "L1.-", "S1", 0.1)
                .wire("W4", "L2.-", "S1", 0.1)
                .wire("W5", "S1", "BAT1.-", 0.1);
    }

    @Test
    void aStarOfReturnsHasNoLoopEvenWhereFeedsAreDoubled() {
        assertEquals(List.of(), loops(twoLamps()));
        // a second feed wire is parallel conductors, but not of returns
        assertEquals(List.of(), loops(twoLamps().wire("W6", "BAT1.+", "L1.+", 0.1)));
    }

    @Test
    void parallelReturnsAreALoop() {
        assertEquals(List.of("W5 W6"), loops(twoLamps().wire("W6", "S1", "BAT1.-", 0.1)));
    }

    @Test
    void aLampThatReturnsTwoWaysIsALoop() {
        assertEquals(List.of("W3 W5 W6"), loops(twoLamps().wire("W6", "L1.-", "BAT1.-", 0.1)));
    }

    @Test
    void twoGroundPinsOfOneUnitToOneSpliceAreALoop() {
        HarnessSketch sketch = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .component(
                        "ECU1",
                        new ControlUnit(
                                List.of(
                                        Pin.of("1", PinRole.SUPPLY),
                                        Pin.of("2", PinRole.GROUND),
                                        Pin.of("3", PinRole.GROUND)),
                                0.2,
                                OptionalDouble.empty(),
                                OptionalDouble.empty()))
                .contact("CT", 0.005)
                .connector("X1", "ECU1", "1 1 CT", "2 2 CT", "3 3 CT")
                .splice("S1", 0)
                .wire("W1", "BAT1.+", "X1.1", 0.1)
                .wire("W2", "X1.2", "S1", 0.1)
                .wire("W3", "X1.3", "S1", 0.1)
                .wire("W4", "S1", "BAT1.-", 0.1);
        assertEquals(List.of("W2 W3 X1.3 X1.2"), loops(sketch));
    }

    @Test
    void aShieldGroundedAtBothEndsIsALoopThroughTheChassis() {
        HarnessSketch sketch = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .body("FRAME", 0.002)
                .ground("G1", "FRAME", 0.001)
                .ground("G2", "FRAME", 0.001)
                .bolt("BAT1", "-", "G1", 0)
                .wire("W1", "G1", "G2", 0.1, SignalClass.SHIELD, OptionalDouble.empty(), OptionalDouble.empty());
        assertEquals(List.of("FRAME.G1 FRAME.G2 G2.joint W1 G1.joint"), loops(sketch));
    }

    @Test
    void aLoopWhollyInsideABodyIsNone() {
        HarnessSketch triangle = new HarnessSketch()
                .body("FRAME")
                .ground("G1", "FRAME", 0.001)
                .ground("G2", "FRAME", 0.001)
                .ground("G3", "FRAME", 0.001)
                .path("FRAME", "G1", "G2", 0.001)
                .path("FRAME", "G2", "G3", 0.001)
                .path("FRAME", "G3", "G1", 0.001);
        assertEquals(List.of(), loops(triangle));
        // a strap across it is one, with the shortest stretch of chassis
        assertEquals(List.of("BS1 FRAME.G2-G3"), loops(triangle.strap("BS1", "G2", "G3", 0.0005)));
    }

    @Test
    void twoStrapsBetweenTwoBodiesAreALoopThroughBoth() {
        HarnessSketch sketch = new HarnessSketch()
                .body("FRAME", 0.002)
                .body("ENGINE")
                .ground("G1", "FRAME", 0.001)
                .ground("G2", "FRAME", 0.001)
                .ground("G3", "ENGINE", 0.001)
                .strap("BS1", "G1", "G3", 0.0005)
                .strap("BS2", "G2", "G3", 0.0005);
        assertEquals(List.of("BS1 BS2 FRAME.G2 FRAME.G1"), loops(sketch));
    }

    @Test
    void aSwitchInTheReturnParts() {
        // both lamps return to a switch by two wires from their common splice: still returns, before the switch
        HarnessSketch sketch = twoLamps()
                .component("SW1", new Switch(List.of("2"), 0.01, 20))
                .wire("W5", "S1", "SW1.1", 0.1)
                .wire("W6", "SW1.2", "BAT1.-", 0.1);
        assertEquals(List.of(), loops(sketch));
        assertEquals(List.of("W5 W7"), loops(sketch.wire("W7", "S1", "SW1.1", 0.1)));
        // a wire past the switch closes no loop of returns: the switch stands between
        assertEquals(
                List.of("W5 W7"),
                loops(sketch.wire("W8", "SW1.2", "BAT1.-", 0.1)).subList(0, 1));
    }

    @Test
    void theLinkBetweenTwoBatteriesInSeriesIsNoReturn() {
        HarnessSketch sketch = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .battery("BAT2", 12, 0.01)
                .wire("W1", "BAT1.+", "BAT2.-", 0.1)
                .wire("W2", "BAT1.+", "BAT2.-", 0.1);
        assertEquals(List.of(), loops(sketch));
        assertEquals(
                Set.of(new PointId("BAT1.-")),
                ReturnNetwork.of(sketch.network()).points());
    }

    /** A return network in short: wire k joins the two points. */
    static Network wires(List<String[]> ends) {
        SortedMap<BranchId, Branch> branches = new TreeMap<>();
        TreeSet<PointId> points = new TreeSet<>(List.of(new PointId("P0"), new PointId("BAT1.+")));
        branches.put(
                new BranchId("BAT1"),
                new Branch(
                        new BranchId("BAT1"),
                        BranchKind.SOURCE,
                        new PointId("P0"),
                        new PointId("BAT1.+"),
                        Optional.empty(),
                        new Law.Open()));
        for (String[] each : ends) {
            BranchId id = new BranchId("W" + branches.size());
            PointId from = new PointId(each[0]);
            PointId to = new PointId(each[1]);
            points.addAll(List.of(from, to));
            branches.put(id, new Branch(id, BranchKind.WIRE, from, to, Optional.empty(), new Law.Resistance(0.1)));
        }
        return new Network(new StateId("running"), points, branches, Optional.empty());
    }

    @Test
    void aVeryLongChainOfSplicesClosedToARingIsOneLoop() {
        int count = Campaign.count(20_000, 100_000);
        List<String[]> ends = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            ends.add(new String[] {"P" + k, "P" + (k + 1) % count});
        }
        Network network = wires(ends);
        List<ReturnLoop> loops = ReturnLoops.of(network).loops();
        assertEquals(1, loops.size());
        assertEquals(count, loops.get(0).members().size());
        // opened it has none
        assertEquals(List.of(), ReturnLoops.of(wires(ends.subList(1, count))).loops());
    }

    @Test
    void twentyThousandConductorsWithTwoHundredLoopsGiveExactlyThose() {
        // a chain of 19,800 wires with 200 wires across: the k-th from point 90k to point 90k + 95, so that each
        // overlaps the next; one block, 200 independent cycles
        List<String[]> ends = new ArrayList<>();
        for (int k = 0; k < 19_800; k++) {
            ends.add(new String[] {"P" + k, "P" + (k + 1)});
        }
        for (int k = 0; k < 200; k++) {
            ends.add(new String[] {"P" + 90 * k, "P" + (90 * k + 95)});
        }
        Network network = wires(ends);
        List<ReturnLoop> loops = ReturnLoops.of(network).loops();
        assertEquals(200, loops.size());
        loops.forEach(loop -> assertHangsTogether(network, loop));
        // the longest needed: one wire across and the 95 it spans
        assertTrue(loops.stream().allMatch(loop -> loop.members().size() <= 96));
    }
}
