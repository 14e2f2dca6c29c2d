package org.ohmloom.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ContactId;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Part;
import org.ohmloom.model.PartId;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;

/** Wires moved about in the cavities of a connector. Everything is invented. */
class CavitiesTest {

    private static final ConnectorId X1 = new ConnectorId("X1");
    private static final EndOfWire W1 = new EndOfWire(new WireId("W1"), true);
    private static final EndOfWire W2 = new EndOfWire(new WireId("W2"), true);

    /** Takes 0.5 mm2 to 1.0 mm2. */
    private static ContactPart small() {
        return new ContactPart(
                new ContactId("CT-S"),
                Optional.empty(),
                0.003,
                List.of(),
                0.5,
                1.0,
                1,
                3,
                List.of(),
                5,
                "Sn",
                Optional.empty(),
                Optional.empty());
    }

    private static Connector connector(String id, Cavity... cavities) {
        return new Connector(
                new ConnectorId(id),
                id,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(cavities),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    private static Cavity open(String name) {
        return new Cavity(name, Optional.empty(), Optional.empty(), Optional.empty(), false);
    }

    private static Wire wire(String id, WireEnd from, SignalClass carries, double areaMm2) {
        return Wire.of(id, from, new WireEnd.Loose(), carries).withGauge(Optional.of(Gauge.metric(areaMm2)));
    }

    private static WireEnd at(String cavity) {
        return new WireEnd.AtCavity(X1, cavity);
    }

    /** X1 with W1 in cavity 1, W2 in cavity 2, nothing in 3 and a plug in 4. */
    private static Harness four() {
        return new HarnessSketch()
                .with(small())
                .with(new Part(
                        new PartId("EX-CV"),
                        "Example",
                        "cavity plug",
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        List.of(),
                        false))
                .with(connector(
                        "X1",
                        new Cavity("1", Optional.empty(), Optional.of(new ContactId("CT-S")), Optional.empty(), false),
                        open("2"),
                        open("3"),
                        new Cavity("4", Optional.empty(), Optional.empty(), Optional.of(new PartId("EX-CV")), false)))
                .with(wire("W1", at("1"), SignalClass.FEED, 0.75))
                .with(wire("W2", at("2"), SignalClass.RETURN, 1.5))
                .harness();
    }

    private static Map<String, String> contents(Harness harness) {
        return CavityUse.of(harness, harness.connectors().get(X1)).stream()
                .collect(Collectors.toMap(
                        use -> use.cavity().name(),
                        use -> use.ends().stream()
                                        .map(end -> end.wire().value())
                                        .collect(Collectors.joining(" "))
                                + (use.cavity().plug().isPresent() ? "plug" : "")));
    }

    @Test
    void anEndMovesToAFreeCavityAndBringsItsKindOfContact() {
        Harness after = PutInCavity.one(W1, X1, "3").apply(four());
        assertEquals(Map.of("1", "", "2", "W2", "3", "W1", "4", "plug"), contents(after));
        Connector connector = after.connectors().get(X1);
        assertEquals(
                Optional.of(new ContactId("CT-S")),
                connector.cavity("3").orElseThrow().contact());
        assertEquals(
                Optional.of(new ContactId("CT-S")),
                connector.cavity("1").orElseThrow().contact());
        assertEquals("Put W1 into X1.3", PutInCavity.one(W1, X1, "3").label().english());
    }

    @Test
    void aPlugComesOutForAWire() {
        assertEquals(
                Map.of("1", "", "2", "W2", "3", "", "4", "W1"),
                contents(PutInCavity.one(W1, X1, "4").apply(four())));
    }

    @Test
    void anEndThatIsThereAlreadyChangesNothing() {
        Harness before = four();
        assertSame(before, PutInCavity.one(W1, X1, "1").apply(before));
        assertThrows(IllegalArgumentException.class, () -> PutInCavity.one(W1, X1, "9")
                .apply(before));
    }

    @Test
    void twoCavitiesSwapWhatTheyHold() {
        assertEquals(
                Map.of("1", "W2", "2", "W1", "3", "", "4", "plug"),
                contents(new SwapCavities(X1, "1", "2").apply(four())));
        assertEquals(
                Map.of("1", "plug", "2", "W2", "3", "", "4", "W1"),
                contents(new SwapCavities(X1, "1", "4").apply(four())));
        assertEquals(
                Map.of("1", "W1", "2", "", "3", "W2", "4", "plug"),
                contents(new SwapCavities(X1, "2", "3").apply(four())));
    }

    @Test
    void aSwapDoneTwiceIsNoSwap() {
        Harness before = four();
        SwapCavities swap = new SwapCavities(X1, "1", "2");
        Harness twice = swap.apply(swap.apply(before));
        assertEquals(contents(before), contents(twice));
        assertSame(before, new SwapCavities(X1, "3", "3").apply(before));
    }

    @Test
    void aClashIsToldFromTheModelAlone() {
        Harness shared = PutInCavity.one(W2, X1, "1").apply(four());
        List<CavityUse> uses = CavityUse.of(shared, shared.connectors().get(X1));
        assertEquals(Set.of(CavityUse.Clash.SHARED), uses.get(0).clashes());

        // CT-S takes up to 1.0 mm2 and W2 has 1.5 mm2
        Harness large = new SwapCavities(X1, "1", "2").apply(four());
        assertEquals(
                Set.of(CavityUse.Clash.TOO_LARGE),
                CavityUse.of(large, large.connectors().get(X1)).get(0).clashes());

        Harness plugged = new PlugCavities(X1, List.of("1"), Optional.of(new PartId("EX-CV"))).apply(four());
        assertEquals(
                Set.of(CavityUse.Clash.PLUGGED),
                CavityUse.of(plugged, plugged.connectors().get(X1)).get(0).clashes());
        four().connectors().all().forEach(connector -> CavityUse.of(four(), connector)
                .forEach(use -> assertEquals(Set.of(), use.clashes())));
    }

    @Test
    void unusedCavitiesArePluggedTogether() {
        PlugCavities edit = PlugCavities.unused(four(), X1, new PartId("EX-CV"));
        assertEquals("Plug X1.3", edit.label().english());
        assertEquals(Map.of("1", "W1", "2", "W2", "3", "plug", "4", "plug"), contents(edit.apply(four())));
    }

    @Test
    void wiresFillTheCavitiesWhoseTerminalsAreForWhatTheyCarry() {
        ControlUnit unit = new ControlUnit(
                List.of(
                        Pin.of("A1", PinRole.SENSOR_RETURN),
                        Pin.of("A2", PinRole.ANALOGUE_INPUT),
                        Pin.of("A3", PinRole.ANALOGUE_INPUT),
                        Pin.of("A4", PinRole.SUPPLY)),
                0.1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Connector bare = connector("X1", meets("1", "A1"), meets("2", "A2"), meets("3", "A3"), meets("4", "A4"));
        Harness harness = new HarnessSketch()
                .with(small())
                .with(Component.of("U1", "unit", unit))
                .with(new Connector(
                        bare.id(),
                        bare.name(),
                        Optional.of(new ComponentId("U1")),
                        Optional.empty(),
                        Optional.empty(),
                        bare.cavities(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        false,
                        Optional.empty()))
                .with(wire("W1", new WireEnd.Loose(), SignalClass.ANALOGUE_SIGNAL, 0.75))
                .with(wire("W2", new WireEnd.Loose(), SignalClass.ANALOGUE_SIGNAL, 0.75))
                .with(wire("W3", new WireEnd.Loose(), SignalClass.ANALOGUE_SIGNAL, 0.75))
                .with(wire("W4", new WireEnd.Loose(), SignalClass.FEED, 2.5))
                .with(wire("W5", new WireEnd.Loose(), SignalClass.REFERENCE_RETURN, 0.75))
                .harness();
        List<EndOfWire> ends = List.of("W1", "W2", "W3", "W4", "W5").stream()
                .map(id -> new EndOfWire(new WireId(id), true))
                .toList();
        CavityFilling filling = CavityFilling.of(harness, X1, ends);
        // two inputs take two of three signals; the feed is too large for the contact; the return has its pin
        assertEquals(Map.of(ends.get(0), "2", ends.get(1), "3", ends.get(4), "1"), filling.cavities());
        assertEquals(List.of(ends.get(2), ends.get(3)), filling.left());
        PutInCavity edit = filling.edit().orElseThrow();
        assertEquals("Put 3 wires into X1", edit.label().english());
        assertEquals(Map.of("1", "W5", "2", "W1", "3", "W2", "4", ""), contents(edit.apply(harness)));
    }

    private static Cavity meets(String name, String terminal) {
        return Cavity.of(name, terminal, "CT-S");
    }

    @Test
    void aWireGoesOppositeToOneOfItsCircuit() {
        Connector one = connector("X1", open("1"), open("2"), open("3"));
        Connector other = connector("X2", open("1"), open("2"), open("3"));
        Harness harness = new HarnessSketch()
                .with(mated(one, "X2"))
                .with(mated(other, "X1"))
                .with(of("W1", new WireEnd.Loose(), "horn"))
                .with(of("W2", new WireEnd.AtCavity(new ConnectorId("X2"), "3"), "horn"))
                .with(of("W3", new WireEnd.Loose(), "lamp"))
                .harness();
        EndOfWire w3 = new EndOfWire(new WireId("W3"), true);
        CavityFilling filling = CavityFilling.of(harness, X1, List.of(W1, w3));
        assertEquals(Map.of(W1, "3", w3, "1"), filling.cavities());
        assertTrue(filling.left().isEmpty());
    }

    private static Connector mated(Connector bare, String mate) {
        return new Connector(
                bare.id(),
                bare.name(),
                Optional.empty(),
                Optional.of(new ConnectorId(mate)),
                Optional.empty(),
                bare.cavities(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    private static Wire of(String id, WireEnd from, String circuit) {
        return new Wire(
                new WireId(id),
                from,
                new WireEnd.Loose(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                SignalClass.SWITCHED_OUTPUT,
                Optional.of(circuit),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false,
                Optional.empty());
    }
}
