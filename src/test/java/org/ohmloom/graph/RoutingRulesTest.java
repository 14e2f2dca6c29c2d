package org.ohmloom.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.RoutingRule;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireId;
import org.ohmloom.model.Zone;
import org.ohmloom.model.ZoneId;

/** The ways of wires that routing rules permit. */
class RoutingRulesTest {
    private static final double EXACT_METRES = 1e-12;

    /** A trunk T1 T2 of 1 m and 2 m, a detour T3 T4 of 2 m and 2 m, and T5 of 9 m straight across; T2 lies in zone HOT. */
    private static HarnessSketch sketch() {
        return new HarnessSketch()
                .segment("T1", "B1", "B2", 1)
                .segment("T2", "B2", "B3", 2)
                .segment("T3", "B1", "B4", 2)
                .segment("T4", "B4", "B3", 2)
                .segment("T5", "B1", "B3", 9)
                .battery("BAT1", 12, 0.01)
                .load("L1", 1, 12)
                .at("BAT1", "B1")
                .at("L1", "B3")
                .wire("W1", "BAT1.+", "L1.+", 0.1)
                .wire("W2", "BAT1.-", "L1.-", 0.1);
    }

    private static Harness ruled(RoutingRule... rules) {
        Harness plain = sketch().harness();
        BundleSegment hot = new BundleSegment(
                new SegmentId("T2"),
                new BreakoutId("B2"),
                new BreakoutId("B3"),
                2,
                Optional.of(new ZoneId("HOT")),
                Optional.empty(),
                Optional.empty());
        Harness zoned = plain.withAll(List.of(new Zone(new ZoneId("HOT"), "Exhaust", 110, false), hot));
        return zoned.withRules(zoned.rules().withFabrication(FabricationRules.NONE.withRouting(List.of(rules))));
    }

    private static void assertWay(Routes routes, String wire, double lengthMetres, String... segments) {
        Route route = routes.of(new WireId(wire)).orElseThrow();
        assertEquals(
                List.of(segments),
                route.segments().stream().map(SegmentId::value).toList());
        assertEquals(lengthMetres, route.lengthMetres(), EXACT_METRES);
        assertEquals(
                lengthMetres,
                route.stretchMetres().stream().mapToDouble(Double::doubleValue).sum(),
                EXACT_METRES);
    }

    private static List<WireId> wires(String... ids) {
        return List.of(ids).stream().map(WireId::new).toList();
    }

    @Test
    void aWireThatKeepsOffAZoneTakesTheShortestWayRoundIt() {
        Routes routes = Routes.of(
                ruled(new RoutingRule.AvoidZone(new ZoneId("HOT"), wires("W1"), List.of(), Optional.empty())));
        assertWay(routes, "W1", 4, "T3", "T4");
        assertWay(routes, "W2", 3, "T1", "T2");
        assertTrue(routes.refused().isEmpty());
    }

    @Test
    void aWireForcedThroughABreakoutPassesIt() {
        Routes routes = Routes.of(
                ruled(new RoutingRule.Through(new BreakoutId("B4"), wires("W2"), List.of(), Optional.empty())));
        assertWay(routes, "W2", 4, "T3", "T4");
        assertWay(routes, "W1", 3, "T1", "T2");
    }

    @Test
    void aWireForcedThroughASpurGoesThereAndBack() {
        // B2 lies on the trunk: over B4 and B2 it is T3 T4, back T2, and T2 again: 2 + 2 + 2 + 2 m; by T1 first
        // 1 m to B2, back 1 m, then T3 T4: 6 m
        Routes routes = Routes.of(ruled(
                new RoutingRule.Through(new BreakoutId("B4"), wires("W1"), List.of(), Optional.empty()),
                new RoutingRule.Through(new BreakoutId("B2"), wires("W1"), List.of(), Optional.empty())));
        assertWay(routes, "W1", 6, "T1", "T1", "T3", "T4");
    }

    @Test
    void aClassKeptApartTakesAnotherSegmentThanTheOtherClass() {
        // both wires of the sketch are feeds; W1 by name keeps apart from the class its neighbour has
        Harness plain = sketch().wire(
                        "W3",
                        "BAT1.+",
                        "L1.+",
                        0.1,
                        SignalClass.DATA_BUS,
                        OptionalDouble.empty(),
                        OptionalDouble.empty())
                .harness();
        Harness ruled = plain.withRules(plain.rules()
                .withFabrication(FabricationRules.NONE.withRouting(List.of(new RoutingRule.Apart(
                        List.of(SignalClass.FEED), List.of(), List.of(SignalClass.DATA_BUS), Optional.empty())))));
        Routes routes = Routes.of(ruled);
        assertWay(routes, "W1", 3, "T1", "T2");
        assertWay(routes, "W3", 4, "T3", "T4");
    }

    @Test
    void aWireWithoutAPermittedWayIsRefusedAndLiesWhereItWouldWithoutItsRules() {
        RoutingRule zone = new RoutingRule.AvoidZone(new ZoneId("HOT"), wires("W1"), List.of(), Optional.empty());
        RoutingRule through = new RoutingRule.Through(new BreakoutId("B9"), wires("W1"), List.of(), Optional.empty());
        Harness harness = ruled(zone);
        harness = harness.with(new Breakout(new BreakoutId("B9"), "Alone", Optional.empty()));
        harness = harness.withRules(
                harness.rules().withFabrication(FabricationRules.NONE.withRouting(List.of(zone, through))));
        Routes routes = Routes.of(harness);
        assertWay(routes, "W1", 3, "T1", "T2");
        RefusedWay refused = routes.refused().get(new WireId("W1"));
        assertEquals(List.of(zone, through), refused.rules());
    }

    @Test
    void aWireWhoseEndsNoSegmentsJoinIsRefused() {
        Harness harness = sketch().segment("FAR", "B8", "B9", 1)
                .load("L2", 1, 12)
                .at("L2", "B9")
                .wire("W4", "BAT1.+", "L2.+", 0.1)
                .harness();
        RefusedWay refused = Routes.of(harness).refused().get(new WireId("W4"));
        assertEquals(List.of(), refused.rules());
        assertEquals(Optional.empty(), refused.taken());
    }
}
