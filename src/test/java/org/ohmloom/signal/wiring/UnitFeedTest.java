package org.ohmloom.signal.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/** The supply and the grounds of a control unit, wired from a fuse at B1 and a ground point at B3 to the unit at B2. */
@BesideOthers
class UnitFeedTest {
    private static final ComponentId UNIT = new ComponentId("U1");
    private static final Optional<GroundPointId> GROUND = Optional.of(new GroundPointId("G1"));
    private static final Optional<WireEnd.AtTerminal> FEED =
            Optional.of(new WireEnd.AtTerminal(new ComponentId("F1"), "2"));

    private static Harness harness() {
        List<Pin> pins = List.of(
                Pin.of("S1", PinRole.SUPPLY),
                Pin.of("S2", PinRole.SUPPLY),
                Pin.of("E1", PinRole.GROUND),
                Pin.of("E2", PinRole.GROUND),
                Pin.of("A1", PinRole.ANALOGUE_INPUT));
        return new HarnessSketch()
                .segment("T1", "B1", "B2", 2)
                .segment("T2", "B2", "B3", 1)
                .fuse("F1", 10, 0.005)
                .component("U1", new ControlUnit(pins, 1, OptionalDouble.empty(), OptionalDouble.empty()))
                .body("FRAME")
                .ground("G1", "FRAME", 0.001)
                .at("F1", "B1")
                .at("U1", "B2")
                .at("G1", "B3")
                .harness();
    }

    private static Harness made(Optional<WireEnd.AtTerminal> feed, Optional<GroundPointId> ground) {
        WiringMade made = UnitFeed.of(harness(), UNIT, feed, ground);
        assertEquals(List.of(), made.problems());
        return made.edit().orElseThrow().apply(harness());
    }

    private static List<Wire> wires(Harness harness, SignalClass signalClass) {
        return harness.wires().all().stream()
                .filter(wire -> wire.signalClass() == signalClass)
                .toList();
    }

    @Test
    void bothSupplyPinsHangOnOneFeedThatBranchesNearThem() {
        Harness after = made(FEED, Optional.empty());
        List<Wire> feeds = wires(after, SignalClass.FEED);
        assertEquals(3, feeds.size(), "to the splice, and on to each pin");
        assertEquals(1, after.splices().all().size());
        assertEquals(List.of(), wires(after, SignalClass.RETURN));
        assertEquals(
                1,
                feeds.stream().filter(wire -> wire.ends().contains(FEED.get())).count());
        for (String pin : List.of("S1", "S2")) {
            assertTrue(feeds.stream().anyMatch(wire -> wire.ends().contains(new WireEnd.AtTerminal(UNIT, pin))), pin);
        }
        assertTrue(feeds.stream().allMatch(wire -> wire.colour().isPresent()));
    }

    @Test
    void eachGroundPinHasAWireOfItsOwnToTheGroundPoint() {
        Harness after = made(Optional.empty(), GROUND);
        List<Wire> grounds = wires(after, SignalClass.RETURN);
        assertEquals(2, grounds.size());
        for (Wire wire : grounds) {
            assertTrue(wire.ends().contains(new WireEnd.AtGround(GROUND.get())), wire.toString());
            assertEquals(1, Routes.of(after).lengthMetres(wire).orElseThrow(), 1e-9, "over T2");
        }
        assertEquals(
                Set.of("E1", "E2"),
                Set.copyOf(grounds.stream()
                        .flatMap(wire -> wire.ends().stream())
                        .filter(WireEnd.AtTerminal.class::isInstance)
                        .map(end -> ((WireEnd.AtTerminal) end).terminal())
                        .toList()));
    }

    @Test
    void nothingAskedMakesNothing() {
        assertEquals(
                Optional.empty(),
                UnitFeed.of(harness(), UNIT, Optional.empty(), Optional.empty()).edit());
    }
}
