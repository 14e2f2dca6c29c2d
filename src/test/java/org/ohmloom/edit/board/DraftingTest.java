package org.ohmloom.edit.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.Position;
import org.ohmloom.model.RoutingRule;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.model.ZoneId;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;

/** New things on the board. */
class DraftingTest {

    private static final Where THERE = new Where.InTheOpen(new Position(120, 40));
    private static final double EXACT = 1e-12;

    static Harness example(String name) throws HarnessFileException {
        return HarnessFiles.read(Path.of("examples", name + HarnessFiles.ENDING));
    }

    @Test
    void aLampPlacedInTheOpenComesWithAConnectorAndABundleEndAtThatPlace() throws HarnessFileException {
        Harness before = example("teaching");
        Drawn lamp = new Drafting(before).component(StartDevice.LAMP, THERE);
        Harness after = lamp.edit().apply(before);
        assertEquals("Place lamp E1", lamp.edit().label().english());
        assertEquals(List.of("B8", "E1", "X3"), lamp.ids().stream().sorted().toList());
        Connector plug = after.connectors().get(new ConnectorId("X3"));
        assertEquals(Optional.of(new ComponentId("E1")), plug.component());
        assertEquals(
                List.of("+", "-"),
                plug.cavities().stream()
                        .map(each -> each.terminal().orElseThrow())
                        .toList());
        assertEquals(
                new Position(120, 40),
                after.layout().get(plug.at().orElseThrow().value()));
    }

    @Test
    void aBatteryIsReachedAtItsOwnTerminalsAndSpeaksOfTheNominalVoltage() throws HarnessFileException {
        Harness before = example("teaching");
        BreakoutId end = new BreakoutId("B4");
        Drawn battery = new Drafting(before).component(StartDevice.BATTERY, new Where.At(end));
        Component placed = battery.edit().apply(before).components().get(new ComponentId("BT2"));
        assertEquals("Battery 2", placed.name());
        assertEquals(Optional.of(end), placed.at());
        // 12 V nominal, six cells of 2.1 V
        assertEquals(12.6, ((Battery) placed.device()).emfVolts(), EXACT);
    }

    @ParameterizedTest
    @EnumSource(StartDevice.class)
    void everyKindOfComponentCanBePlacedAt12And24And48Volts(StartDevice kind) {
        Harness before = new HarnessSketch().harness();
        Harness after = new Drafting(before).component(kind, THERE).edit().apply(before);
        assertEquals(1, after.components().size());
        for (double volts : new double[] {12, 24, 48}) {
            assertTrue(kind.at(volts).terminals().size() >= 2, kind + " has terminals");
        }
    }

    @Test
    void aSegmentDrawnFromABreakoutIntoTheOpenMakesTheOtherEnd() throws HarnessFileException {
        Harness before = example("teaching");
        Drawn drawn = new Drafting(before).segment(new Where.At(new BreakoutId("B1")), THERE, 0.42);
        Harness after = drawn.edit().apply(before);
        SegmentId id = new SegmentId("SG7");
        assertEquals(0.42, after.segments().get(id).lengthMetres(), EXACT);
        assertEquals(new BreakoutId("B1"), after.segments().get(id).from());
        assertEquals(
                new Position(120, 40),
                after.layout().get(after.segments().get(id).to().value()));
        assertThrows(IllegalArgumentException.class, () -> new Drafting(before)
                .segment(new Where.At(new BreakoutId("B1")), new Where.At(new BreakoutId("B1")), 0.42));
    }

    @Test
    void theFirstGroundPointBringsAFrameAndLaterOnesUseIt() {
        Harness empty = new HarnessSketch().harness();
        Harness one = new Drafting(empty).ground(THERE).edit().apply(empty);
        Harness two = new Drafting(one).ground(THERE).edit().apply(one);
        assertEquals(1, two.bodies().size());
        assertEquals(
                two.grounds().get(new GroundPointId("G1")).body(),
                two.grounds().get(new GroundPointId("G2")).body());
        assertEquals(
                "Ground point 2", two.grounds().get(new GroundPointId("G2")).name());
    }

    @Test
    void aWireToAMinusIsAReturnAndOneFromASwitchIsSwitched() throws HarnessFileException {
        Harness before = example("teaching");
        assertEquals(
                SignalClass.RETURN,
                wire(before, new WireEnd.AtCavity(new ConnectorId("X1"), "2"), new WireEnd.Loose()));
        assertEquals(
                SignalClass.RETURN, wire(before, new WireEnd.Loose(), new WireEnd.AtGround(new GroundPointId("G1"))));
        assertEquals(
                SignalClass.SWITCHED_OUTPUT,
                wire(before, new WireEnd.AtTerminal(new ComponentId("S1"), "2"), new WireEnd.Loose()));
        assertEquals(
                SignalClass.FEED,
                wire(before, new WireEnd.AtTerminal(new ComponentId("BT1"), "+"), new WireEnd.Loose()));
    }

    private static SignalClass wire(Harness before, WireEnd from, WireEnd to) {
        Drawn drawn = new Drafting(before).wire(from, to);
        return drawn.edit()
                .apply(before)
                .wires()
                .get(new WireId(drawn.ids().get(0)))
                .signalClass();
    }

    @Test
    void aSpliceCutsAWireInTwoAndSharesItsLengthByThePlace() throws HarnessFileException {
        Harness before = example("teaching");
        WireId id = new WireId("W2");
        Wire whole = before.wires().get(id);
        Place place = new Place.OnSegment(new SegmentId("SG1"), 0.1);
        Drawn drawn = InsertSplice.on(before, id, Optional.of(place), 0.3);
        Harness after = drawn.edit().apply(before);
        Wire first = after.wires().get(id);
        Wire second = after.wires().get(new WireId(drawn.ids().get(2)));
        WireEnd.AtSplice joint = new WireEnd.AtSplice(new SpliceId(drawn.ids().get(0)));
        assertEquals(List.of(whole.from(), joint), first.ends());
        assertEquals(List.of(joint, whole.to()), second.ends());
        // 1 m cut at three tenths: 0.3 m and 0.7 m
        assertEquals(0.3, first.lengthMetres().orElseThrow(), EXACT);
        assertEquals(0.7, second.lengthMetres().orElseThrow(), EXACT);
        assertEquals(whole.gauge(), second.gauge());
        assertEquals(whole.colour(), second.colour());
        assertEquals(Optional.of(place), after.splices().get(joint.splice()).place());
    }

    @Test
    void halvesOfAWireWhoseLengthIsItsWayTakeTheirWaysAndAMeasuredResistanceGoes() {
        Harness before = new HarnessSketch()
                .battery("B1", 12, 0.01)
                .load("L1", 5, 12)
                .wire("W1", "B1.+", "L1.+", 0.02)
                .harness();
        Harness way = before.with(before.wires().get(new WireId("W1")).withLengthMetres(OptionalDouble.empty()));
        assertTrue(way.wires().get(new WireId("W1")).measuredOhms().isPresent());
        Harness after = InsertSplice.on(way, new WireId("W1"), Optional.empty(), 0.5)
                .edit()
                .apply(way);
        after.wires().all().forEach(wire -> {
            assertTrue(wire.lengthMetres().isEmpty());
            assertTrue(wire.measuredOhms().isEmpty());
        });
    }

    @Test
    void theRoutingRulesOfAWireNameItsSecondHalfToo() throws HarnessFileException {
        Harness plain = example("teaching");
        WireId id = new WireId("W2");
        var rule = new RoutingRule.Through(new BreakoutId("B2"), List.of(id), List.of(), Optional.empty());
        Harness before = plain.withRules(
                plain.rules().withFabrication(plain.rules().fabricationRules().withRouting(List.of(rule))));
        Drawn drawn = InsertSplice.on(before, id, Optional.empty(), 0.5);
        Harness after = drawn.edit().apply(before);
        assertEquals(
                Set.of(id, new WireId(drawn.ids().get(2))),
                Set.copyOf(after.rules().fabricationRules().routing().get(0).wires()));
    }

    @Test
    void thingsPaintedWithAZoneLieInItAndOthersDoNot() throws HarnessFileException {
        Harness before = example("workboat");
        ZoneId zone = before.zones().ids().iterator().next();
        SegmentId segment = before.segments().ids().iterator().next();
        ComponentId component = before.components().ids().iterator().next();
        PaintZone none = new PaintZone(List.of(segment.value(), component.value(), "W1"), Optional.empty());
        Harness bare = none.apply(before);
        assertTrue(bare.segments().get(segment).zone().isEmpty());
        Harness painted = new PaintZone(List.of(segment.value(), component.value()), Optional.of(zone)).apply(bare);
        assertEquals(Optional.of(zone), painted.segments().get(segment).zone());
        assertEquals(Optional.of(zone), painted.components().get(component).zone());
        assertEquals("Take 3 things out of its zone", none.label().english());
    }

    @Test
    void aComponentHungElsewhereTakesItsConnectorAlong() throws HarnessFileException {
        Harness before = example("teaching");
        BreakoutId there = new BreakoutId("B6");
        Harness after = new HangAt(Set.of("H1"), there).apply(before);
        assertEquals(
                Optional.of(there),
                after.connectors().get(new ConnectorId("X1")).at());
        Breakout known = after.breakouts().get(there);
        assertEquals("B6", known.id().value());
        assertEquals(before, new HangAt(Set.of("H1"), new BreakoutId("B4")).apply(before));
    }
}
