package org.ohmloom.signal.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.BusId;
import org.ohmloom.model.Channel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.signal.bus.wiring.BusProblem;
import org.ohmloom.signal.bus.wiring.BusWiring;
import org.ohmloom.signal.bus.wiring.BusWiringStudy;
import org.ohmloom.signal.unit.Joints;
import org.ohmloom.tables.WireTables;

/** Buses of two and four units, fused feeds and pins with wires, made on small harnesses and looked at by the studies. */
@BesideOthers
class BusMadeTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final WireTables TABLES = WireTables.bundled();

    /** Splices lie up to so far from the breakout they are made for, m. */
    private static final double SPLICES_METRES = 1;

    private static ControlUnit unit(Pin... more) {
        List<Pin> pins = new ArrayList<>(List.of(Pin.of("H", PinRole.BUS_HIGH), Pin.of("L", PinRole.BUS_LOW)));
        pins.addAll(List.of(more));
        return new ControlUnit(pins, 0.1, NONE, NONE);
    }

    /** U1 - 4 m - B2 - 6 m - U3, U2 half a metre and U4 6 m off B2. */
    private static HarnessSketch four() {
        HarnessSketch sketch = new HarnessSketch()
                .segment("G1", "B1", "B2", 4)
                .segment("G2", "B2", "B3", 6)
                .segment("G3", "B2", "B4", 0.5)
                .segment("G4", "B2", "B5", 6);
        for (String unit : List.of("U1", "U2", "U3", "U4")) {
            sketch.component(unit, unit());
        }
        return sketch.at("U1", "B1").at("U2", "B4").at("U3", "B3").at("U4", "B5");
    }

    private static BusWiring study(Harness harness, String bus) {
        Routes routes = Routes.of(harness);
        SortedMap<WireId, Double> lengths = new TreeMap<>();
        harness.wires()
                .all()
                .forEach(
                        wire -> lengths.put(wire.id(), routes.lengthMetres(wire).orElse(0)));
        return BusWiringStudy.of(
                harness,
                NetworkBuilder.build(harness, HarnessSketch.state(), wire -> 0.1, TABLES),
                lengths,
                TABLES.signals(),
                harness.buses().get(new BusId(bus)));
    }

    private static Harness made(Harness harness) {
        WiringMade made = WiringMade.of(harness);
        assertEquals(List.of(), made.problems());
        return made.edit().orElseThrow().apply(harness);
    }

    /** A trunk of 6 + 6 = 12 m from U3 to U4, U1 on 4 m of stub (the set allows 5.5 m at 500 kbit/s), U2 on half a metre. */
    @Test
    void fourUnitsGetATrunkWithStubsAndTwoTerminations() {
        Harness harness = made(four().harness());
        DataBus bus = harness.buses().all().iterator().next();
        BusWiring wiring = study(harness, bus.id().value());
        assertEquals(
                List.of(), wiring.problems().stream().map(BusProblem::words).toList());
        assertEquals(12, wiring.trunkMetres(), SPLICES_METRES);
        assertEquals(4.5, wiring.stubsMetres(), SPLICES_METRES);
        assertEquals(2, bus.terminations().size());
        assertEquals(List.of(), WiringMade.of(harness).wires(), "nothing is left to make");
    }

    /** SAE J1939-14 allows stubs of 1 m: the trunk goes by U1 itself, 6 + 4 + 4 + 6 = 20 m. */
    @Test
    void theTrunkMakesADetourToANodeTooFarForAStub() {
        List<DataBus.Node> nodes = new ArrayList<>();
        for (String unit : List.of("U1", "U2", "U3", "U4")) {
            nodes.add(DataBus.Node.of(new ComponentId(unit), "H", "L"));
        }
        DataBus bus = new DataBus(
                new BusId("CAN1"),
                "Bus",
                500_000,
                29,
                Optional.of("sae-j1939-14"),
                nodes,
                List.of(),
                Optional.empty(),
                List.of());
        BusWiring wiring = study(made(four().with(bus).harness()), "CAN1");
        assertEquals(
                List.of(), wiring.problems().stream().map(BusProblem::words).toList());
        assertEquals(20, wiring.trunkMetres(), SPLICES_METRES);
        assertEquals(0.5, wiring.stubsMetres(), 0.5);
    }

    /** Through a bulkhead each side is a twisted pair of its own, and a third unit later hangs on the splices that are there. */
    @Test
    void aBusGoesThroughABulkheadAndTakesAUnitMoreLater() {
        HarnessSketch sketch = new HarnessSketch()
                .segment("G1", "B1", "B2", 2)
                .segment("G2", "B3", "B4", 3)
                .segment("G3", "B3", "B5", 1)
                .inline("X1", "X2", "1", "2", "3")
                .at("X1", "B2")
                .at("X2", "B3")
                .component("U1", unit())
                .component("U2", unit())
                .at("U1", "B1")
                .at("U2", "B4");
        Harness two = made(sketch.harness());
        assertEquals(4, two.wires().size());
        assertEquals(2, two.cables().size());

        Harness three = made(sketch.component("U3", unit()).at("U3", "B5").harness());
        assertEquals(2, three.splices().size());
        HarnessSketch fourth = new HarnessSketch();
        three.elements().forEach(fourth::with);
        Harness four = made(fourth.component("U4", unit()).at("U4", "B5").harness());
        BusWiring wiring = study(four, four.buses().ids().iterator().next().value());
        assertEquals(4, wiring.nodes().stream().filter(each -> each.joined()).count());
        assertEquals(
                List.of(), wiring.problems().stream().map(BusProblem::words).toList());
    }

    /**
     * SAE J1939-11 asks for a shield: high, low and drain need three cavities. The pair 1 m on has two, the one 3 m on has three, so
     * the bus goes by that one.
     */
    @Test
    void aShieldedBusGoesThroughThePairWithRoomForItsDrain() {
        DataBus bus = new DataBus(
                new BusId("CAN1"),
                "Bus",
                250_000,
                29,
                Optional.of("sae-j1939-11"),
                List.of(
                        DataBus.Node.of(new ComponentId("U1"), "H", "L"),
                        DataBus.Node.of(new ComponentId("U2"), "H", "L")),
                List.of(),
                Optional.empty(),
                List.of());
        Harness harness = made(new HarnessSketch()
                .segment("G1", "B1", "B2", 1)
                .segment("G2", "B3", "B4", 1)
                .segment("G3", "B1", "B5", 3)
                .segment("G4", "B6", "B4", 3)
                .inline("X1", "X2", "1", "2")
                .inline("X3", "X4", "1", "2", "3")
                .at("X1", "B2")
                .at("X2", "B3")
                .at("X3", "B5")
                .at("X4", "B6")
                .body("M1")
                .ground("GP1", "M1", 0.001)
                .at("GP1", "B1")
                .component("U1", unit())
                .component("U2", unit())
                .at("U1", "B1")
                .at("U2", "B4")
                .with(bus)
                .harness());
        assertEquals(6, harness.wires().size());
        assertEquals(
                List.of("X3", "X4"),
                harness.wires().all().stream()
                        .flatMap(wire -> wire.ends().stream())
                        .filter(WireEnd.AtCavity.class::isInstance)
                        .map(end -> ((WireEnd.AtCavity) end).connector().value())
                        .distinct()
                        .sorted()
                        .toList());
    }

    /** Two units wired straight, pin to pin: a third gets splices beside the nearer one, and the wires there move onto them. */
    @Test
    void aUnitMoreOnABusWithoutSplicesGetsThemBesideTheNearestNode() {
        HarnessSketch sketch = new HarnessSketch()
                .segment("G1", "B1", "B2", 2)
                .segment("G2", "B2", "B3", 1)
                .component("U1", unit())
                .component("U2", unit())
                .at("U1", "B1")
                .at("U2", "B2");
        HarnessSketch later = new HarnessSketch();
        made(sketch.harness()).elements().forEach(later::with);
        later.component("U3", unit()).at("U3", "B3");
        WiringMade made = WiringMade.of(later.harness());
        assertEquals(List.of(), made.problems());
        assertEquals(2, made.moved().size());
        assertEquals(2, made.splices().size());
        Harness three = made.edit().orElseThrow().apply(later.harness());
        BusWiring wiring = study(three, three.buses().ids().iterator().next().value());
        assertEquals(
                List.of(), wiring.problems().stream().map(BusProblem::words).toList());
        assertEquals(1, wiring.stubsMetres(), 1e-9);
        assertEquals(
                2, three.wires().all().stream().map(Wire::colour).distinct().count(), "one colour for each line");
    }

    /** A valve of 3 A on a low-side output: 1.25 x 3 = 3.75 A, so a fuse of 4 or 5 A beside the one that is there. */
    @Test
    void whatALowSideOutputSwitchesGetsAFusedFeed() {
        ControlUnit driving = unit(Pin.of("L1", PinRole.LOW_SIDE_OUTPUT))
                .withChannels(List.of(
                        new Channel("Valve", "L1", new ComponentId("Y1"), Optional.empty(), Optional.empty(), false)));
        Harness harness = made(new HarnessSketch()
                .segment("G1", "B1", "B2", 1)
                .segment("G2", "B2", "B3", 2)
                .battery("BT1", 12.6, 0.01)
                .fuse("F1", 20, 0.005)
                .component("U1", driving)
                .load("Y1", 3, 12)
                .at("BT1", "B1")
                .at("F1", "B1")
                .at("U1", "B2")
                .at("Y1", "B3")
                .wire("W1", "BT1.+", "F1.1", 0.01)
                .harness());
        Device fuse = harness.components().get(new ComponentId("F2")).device();
        double rating = ((ProtectiveDevice) fuse).ratingAmps();
        assertTrue(rating == 4 || rating == 5, rating + " A");
        Joints joints = Joints.of(harness);
        assertTrue(joints.with(new ComponentId("BT1"), Device.POSITIVE).contains("F2." + ProtectiveDevice.SUPPLY_SIDE));
        assertTrue(joints.with(new ComponentId("Y1"), Device.POSITIVE).contains("F2." + ProtectiveDevice.LOAD_SIDE));
        assertTrue(joints.with(new ComponentId("Y1"), Device.NEGATIVE).contains("U1.L1"));
    }

    /** REF of U1 is wired to B1 straight; B2 joins by a splice beside the pin, and B3 then by that same splice. */
    @Test
    void aReferenceSupplyThatHasAWireTakesMoreSensorsByASplice() {
        Sensor sensor = new Sensor(Sensor.Kind.RATIOMETRIC, 0.01, NONE);
        ControlUnit reading = unit(
                        Pin.of("REF", PinRole.REFERENCE_SUPPLY),
                        Pin.of("A1", PinRole.ANALOGUE_INPUT),
                        Pin.of("A2", PinRole.ANALOGUE_INPUT))
                .withChannels(List.of(
                        new Channel("Oil", "A2", new ComponentId("S2"), Optional.of("REF"), Optional.empty(), false)));
        HarnessSketch sketch = new HarnessSketch()
                .component("U1", reading)
                .component("S1", sensor)
                .component("S2", sensor)
                .wire("W1", "U1.REF", "S1.supply", 0.1);
        WiringMade made = WiringMade.of(sketch.harness());
        assertEquals(List.of(), made.problems());
        assertEquals(
                List.of("W1"),
                made.moved().stream().map(Wire::id).map(WireId::value).toList());
        Harness harness = made.edit().orElseThrow().apply(sketch.harness());
        assertTrue(
                Joints.of(harness).with(new ComponentId("U1"), "REF").containsAll(List.of("S1.supply", "S2.supply")));
        assertEquals(1, harness.splices().size());
        assertEquals(4, harness.wires().size(), "W1, from the pin to the splice, and two of S2");
    }
}
