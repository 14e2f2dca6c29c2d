package org.ohmloom.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Diode;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/** Protective devices between sources and the conductors they feed. */
class UpstreamTest {
    private static final double EXACT_METRES = 1e-12;

    private static Upstream upstream(HarnessSketch sketch) {
        Harness harness = sketch.harness();
        return Upstream.of(sketch.network(), harness, Wire::lengthMetres);
    }

    private static String names(SortedSet<ComponentId> devices) {
        return devices.stream().map(ComponentId::value).collect(Collectors.joining(" "));
    }

    private static Guard only(HarnessSketch sketch, String wire) {
        List<Guard> guards = upstream(sketch).guards(new WireId(wire));
        assertEquals(1, guards.size());
        return guards.get(0);
    }

    /** Battery, 0.2 m to a main fuse, 1.5 m to a bus, from there two fused loads, and one load straight from the bus. */
    private static HarnessSketch busAndBranches() {
        return new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .fuse("F1", 60, 0.001)
                .fuse("F2", 10, 0.008)
                .fuse("F3", 5, 0.02)
                .component("BUS1", new BusBar(List.of("a", "b", "c", "d"), 0.0001))
                .load("L1", 5, 12)
                .load("L2", 2, 12)
                .load("L3", 1, 12)
                .run("W1", "BAT1.+", "F1.1", 0.2)
                .run("W2", "F1.2", "BUS1.a", 1.5)
                .run("W3", "BUS1.b", "F2.1", 0.1)
                .run("W4", "F2.2", "L1.+", 3)
                .run("W5", "BUS1.c", "F3.1", 0.1)
                .run("W6", "F3.2", "L2.+", 3)
                .run("W7", "BUS1.d", "L3.+", 2)
                .run("W8", "L1.-", "BAT1.-", 4)
                .run("W9", "L2.-", "BAT1.-", 4);
    }

    @Test
    void devicesInSeriesAllProtectTheNearestIsTheLast() {
        Guard bare = only(busAndBranches(), "W1");
        assertTrue(bare.bare());
        assertEquals("", names(bare.inSeries()));
        Guard main = only(busAndBranches(), "W7");
        assertFalse(main.bare());
        assertEquals("F1", names(main.inSeries()));
        assertEquals("F1", names(main.nearest()));
        Guard branch = only(busAndBranches(), "W4");
        assertEquals("F1 F2", names(branch.inSeries()));
        assertEquals("F2", names(branch.nearest()));
    }

    @Test
    void aReturnHasNoGuard() {
        Upstream upstream = upstream(busAndBranches());
        assertEquals(List.of(), upstream.guards(new WireId("W8")));
        assertTrue(upstream.isReturn(new WireId("W8")));
        assertFalse(upstream.isReturn(new WireId("W7")));
    }

    @Test
    void theDistanceToTheFirstDeviceIsTheLengthOfTheBareConductor() {
        BareFeed feed = upstream(busAndBranches()).bareFeeds().get(0);
        assertEquals(Set.of(new WireId("W1")), feed.wires().keySet());
        assertEquals(1, feed.devices().size());
        assertEquals(new ComponentId("F1"), feed.devices().get(0).device());
        assertEquals(0.2, feed.devices().get(0).way().lengthMetres().orElseThrow(), EXACT_METRES);
        assertEquals(Set.of(), feed.loads());
    }

    @Test
    void anUnfusedFeedIsBareUpToItsLoad() {
        // the same without the main fuse: everything up to F2 and F3, and all of L3's feed
        HarnessSketch sketch = busAndBranches().run("W1", "BAT1.+", "F1.2", 0.2);
        BareFeed feed = upstream(sketch).bareFeeds().get(0);
        assertEquals(
                List.of("W1", "W2", "W3", "W5", "W7"),
                feed.wires().keySet().stream().map(WireId::value).toList());
        assertEquals(Set.of(new ComponentId("L3")), feed.loads());
        // 0.2 m + 1.5 m + 2 m to the far end of W7
        assertEquals(3.7, feed.wires().get(new WireId("W7")).lengthMetres().orElseThrow(), EXACT_METRES);
        // F1 is reached at its load side; F2 and F3 after 0.2 m + 1.5 m + 0.1 m
        assertEquals(
                List.of("F1", "F2", "F3"),
                feed.devices().stream().map(each -> each.device().value()).toList());
        assertEquals(1.8, feed.devices().get(1).way().lengthMetres().orElseThrow(), EXACT_METRES);
    }

    @Test
    void aWireWithoutLengthLeavesTheDistanceOpen() {
        HarnessSketch sketch = busAndBranches().wire("W1", "BAT1.+", "F1.1", 0.01);
        FirstDevice device = upstream(sketch).bareFeeds().get(0).devices().get(0);
        assertEquals(OptionalDouble.empty(), device.way().lengthMetres());
        assertEquals(List.of(new BranchId("W1")), device.way().branches());
    }

    @Test
    void eachSourceHasItsOwnDevices() {
        // an alternator straight on the bus: for it W2 is bare, for the battery F1 protects it
        HarnessSketch sketch =
                busAndBranches().component("ALT1", new Alternator(14, 0.01, 60)).run("W10", "ALT1.+", "BUS1.a", 1);
        List<Guard> guards = upstream(sketch).guards(new WireId("W2"));
        assertEquals(
                List.of("ALT1", "BAT1"),
                guards.stream().map(each -> each.source().branch().value()).toList());
        assertTrue(guards.get(0).bare());
        assertFalse(guards.get(1).bare());
        // W1 in turn is protected from the alternator by F1
        assertEquals(
                "F1", names(upstream(sketch).guards(new WireId("W1")).get(0).inSeries()));
    }

    @Test
    void feedsJoinedBehindTheirFusesHaveTwoNearestAndNoneInSeries() {
        HarnessSketch sketch = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .fuse("F1", 10, 0.008)
                .fuse("F2", 10, 0.008)
                .load("L1", 5, 12)
                .run("W1", "BAT1.+", "F1.1", 0.1)
                .run("W2", "BAT1.+", "F2.1", 0.1)
                .run("W3", "F1.2", "L1.+", 1)
                .run("W4", "F2.2", "L1.+", 1);
        Guard guard = only(sketch, "W3");
        assertFalse(guard.bare());
        assertEquals("", names(guard.inSeries()));
        assertEquals("F1 F2", names(guard.nearest()));
    }

    @Test
    void aChangeOverRelayNeverJoinsItsTwoThrows() {
        // battery to 87, a second battery to 87a, load on 30: neither battery reaches the other's wire
        HarnessSketch sketch = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .battery("BAT2", 12, 0.01)
                .component("K1", new Relay(90, 7, 2, 0.01, 30, true))
                .fuse("F1", 10, 0.008)
                .load("L1", 5, 12)
                .run("W1", "BAT1.+", "F1.1", 0.1)
                .run("W2", "F1.2", "K1.87", 1)
                .run("W3", "BAT2.+", "K1.87a", 1)
                .run("W4", "K1.30", "L1.+", 1)
                .run("W5", "BAT1.-", "BAT2.-", 1);
        Upstream upstream = upstream(sketch);
        assertEquals(
                List.of("BAT2"),
                upstream.guards(new WireId("W3")).stream()
                        .map(each -> each.source().branch().value())
                        .toList());
        List<Guard> load = upstream.guards(new WireId("W4"));
        assertEquals("F1", names(load.get(0).inSeries()));
        assertTrue(load.get(1).bare());
        FeedSource second = upstream.sources().get(1);
        assertTrue(upstream.way(second, new PointId("L1.+")).isPresent());
        assertFalse(upstream.way(second, new PointId("K1.87")).isPresent());
    }

    @Test
    void aDiodeLetsTheFeedPassOneWayOnly() {
        HarnessSketch sketch = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .component("D1", new Diode(0.7, 0.01, 10))
                .component("D2", new Diode(0.7, 0.01, 10))
                .run("W1", "BAT1.+", "D1.anode", 0.1)
                .run("W2", "D1.cathode", "loose", 0.1)
                .run("W3", "BAT1.+", "D2.cathode", 0.1)
                .run("W4", "D2.anode", "loose", 0.1);
        assertTrue(only(sketch, "W2").bare());
        assertEquals(List.of(), upstream(sketch).guards(new WireId("W4")));
    }

    @Test
    void theWayFromASourceToALoadIsTheShortestAlongWires() {
        Upstream upstream = upstream(busAndBranches());
        FeedWay way =
                upstream.way(upstream.sources().get(0), new PointId("L1.+")).orElseThrow();
        assertEquals(
                List.of("W1", "F1", "W2", "BUS1.a", "BUS1.b", "W3", "F2", "W4"),
                way.branches().stream().map(BranchId::value).toList());
        // 0.2 + 1.5 + 0.1 + 3 m
        assertEquals(4.8, way.lengthMetres().orElseThrow(), EXACT_METRES);
    }

    @Test
    void aThousandFusedFeedsAreFollowedToTheirSource() {
        HarnessSketch sketch = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .fuse("F0", 60, 0.001)
                .splice("S1", 0);
        sketch.run("W0", "BAT1.+", "F0.1", 0.1).run("V0", "F0.2", "S1", 0.1);
        for (int k = 1; k <= 1000; k++) {
            sketch.fuse("F" + k, 5, 0.02).load("L" + k, 1, 12);
            sketch.run("W" + k, "S1", "F" + k + ".1", 0.1).run("V" + k, "F" + k + ".2", "L" + k + ".+", 1);
        }
        Upstream upstream = upstream(sketch);
        Guard guard = upstream.guards(new WireId("V777")).get(0);
        assertEquals("F0 F777", names(guard.inSeries()));
        assertEquals("F777", names(guard.nearest()));
    }
}
