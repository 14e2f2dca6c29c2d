package org.ohmloom.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.WireId;

/** The ways of wires over the physical harness. */
class RoutesTest {
    private static final double EXACT_METRES = 1e-12;

    /** A trunk B1 - B2 - B3 of 1 m and 2 m, with a detour B1 - B4 - B3 of 2 m and 2 m. */
    private static HarnessSketch trunk() {
        return new HarnessSketch()
                .segment("T1", "B1", "B2", 1)
                .segment("T2", "B2", "B3", 2)
                .segment("T3", "B1", "B4", 2)
                .segment("T4", "B4", "B3", 2)
                .battery("BAT1", 12, 0.01)
                .load("L1", 1, 12)
                .load("L2", 1, 12)
                .splice("S1", 0)
                .splice("S2", 0)
                .at("BAT1", "B1")
                .at("L1", "B3");
    }

    private static Route route(Harness harness, String wire) {
        return Routes.of(harness).of(new WireId(wire)).orElseThrow();
    }

    private static void assertWay(Harness harness, double lengthMetres, String... segments) {
        Route route = route(harness, "W1");
        assertEquals(
                List.of(segments),
                route.segments().stream().map(SegmentId::value).toList());
        assertEquals(lengthMetres, route.lengthMetres(), EXACT_METRES);
    }

    @Test
    void aWireTakesTheShorterOfTwoWays() {
        // 1 m + 2 m by the trunk, 2 m + 2 m by the detour; segments in order from the wire's own from end
        assertWay(trunk().wire("W1", "BAT1.+", "L1.+", 0.1).harness(), 3, "T1", "T2");
        assertWay(trunk().wire("W1", "L1.+", "BAT1.+", 0.1).harness(), 3, "T2", "T1");
    }

    @Test
    void aSpliceAlongASegmentCountsOnlyTheStretchUpToIt() {
        // 0.5 m into T2: 1 m + 0.5 m from B1, 1.5 m from B3
        HarnessSketch sketch = trunk().along("S1", "T2", 0.5);
        assertWay(sketch.wire("W1", "BAT1.+", "S1", 0.1).harness(), 1.5, "T1", "T2");
        assertWay(sketch.wire("W1", "S1", "L1.+", 0.1).harness(), 1.5, "T2");
        // the other splice 0.3 m further on the same segment
        assertWay(sketch.along("S2", "T2", 0.8).wire("W1", "S1", "S2", 0.1).harness(), 0.3, "T2");
        // at the very end of a segment no stretch of it is used
        assertWay(sketch.along("S2", "T2", 2).wire("W1", "S2", "L1.+", 0.1).harness(), 0);
    }

    @Test
    void twoSplicesOnOneLongSegmentMayBeCloserTheOtherWayRound() {
        // a ring of 10 m and 1 m: from 1 m to 9 m along it is 8 m, over the ends 1 + 1 + 1 = 3 m
        Harness harness = new HarnessSketch()
                .segment("R1", "B1", "B2", 10)
                .segment("R2", "B1", "B2", 1)
                .splice("S1", 0)
                .splice("S2", 0)
                .along("S1", "R1", 1)
                .along("S2", "R1", 9)
                .wire("W1", "S1", "S2", 0.1)
                .harness();
        assertWay(harness, 3, "R1", "R2", "R1");
    }

    @Test
    void aConnectorWithoutAPlaceIsWhereItsComponentIs() {
        HarnessSketch sketch = trunk().connector("X1", "L1", "1 +");
        assertWay(sketch.wire("W1", "BAT1.+", "X1.1", 0.1).harness(), 3, "T1", "T2");
        assertWay(sketch.at("X1", "B4").wire("W1", "BAT1.+", "X1.1", 0.1).harness(), 2, "T3");
    }

    @Test
    void aWireWithoutAPlaceOrAWayHasNoRoute() {
        Harness harness = trunk().segment("FAR", "B8", "B9", 1)
                .at("L2", "B9")
                .wire("W1", "BAT1.+", "S1", 0.1)
                .wire("W2", "BAT1.+", "L2.+", 0.1)
                .wire("W3", "BAT1.+", "loose", 0.1)
                .run("W4", "BAT1.+", "L2.-", 7)
                .harness();
        Routes routes = Routes.of(harness);
        assertEquals(Optional.empty(), routes.of(new WireId("W1")));
        assertEquals(Optional.empty(), routes.of(new WireId("W2")));
        assertEquals(Optional.empty(), routes.of(new WireId("W3")));
        // an entered length serves all the same
        assertEquals(OptionalDouble.of(7), routes.lengthMetres(harness.wires().get(new WireId("W4"))));
    }

    @Test
    void theWiresOfEachSegmentAreKnown() {
        Routes routes = Routes.of(trunk().wire("W1", "BAT1.+", "L1.+", 0.1)
                .wire("W2", "BAT1.-", "L1.-", 0.1)
                .harness());
        assertEquals(
                List.of(new WireId("W1"), new WireId("W2")),
                List.copyOf(routes.wiresBySegment().get(new SegmentId("T1"))));
    }

    @Test
    void fiveThousandWiresOverAThousandSegmentsAreRouted() {
        HarnessSketch sketch = new HarnessSketch();
        for (int k = 0; k < 1000; k++) {
            sketch.segment("T" + k, "B" + k, "B" + (k + 1), 0.1);
            sketch.component("Q" + k, new BusBar(List.of("a", "b"), 0)).at("Q" + k, "B" + k);
        }
        for (int k = 0; k < 5000; k++) {
            sketch.wire("W" + k, "Q" + k % 1000 + ".a", "Q" + (k * 7 + 13) % 1000 + ".b", 0.1);
        }
        Harness harness = sketch.harness();
        Routes routes = Routes.of(harness);
        // W2 goes from Q2 to Q27: 25 segments of 0.1 m
        assertEquals(2.5, routes.of(new WireId("W2")).orElseThrow().lengthMetres(), 1e-9);
        assertEquals(5000, routes.byWire().size());
    }
}
