package org.ohmloom.signal.bus.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.model.BusId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.signal.bus.wiring.BusProblem.Kind;
import org.ohmloom.tables.BusFigure;
import org.ohmloom.tables.BusLimit;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.WireTables;

/** Buses of three and four nodes by hand, and the published limits and lengths. */
@BesideOthers
class BusWiringTest {
    private static final WireTables TABLES = WireTables.bundled();
    private static final double EXACT = 1e-9;

    /** CiA 303-1, bus length by conductor and nodes as a drive's manual restates it (90 and 33 mohm/m), in tens of metres: within 2.5 %. */
    @ParameterizedTest
    @CsvSource({"0.090,32,200", "0.090,64,170", "0.090,100,150", "0.033,32,550", "0.033,64,470", "0.033,100,410"})
    void theLinesMayHaveSoMuchResistanceAsThePublishedLengthsSay(double ohmsPerMetre, int nodes, double metres) {
        double most = LineFormulas.allowedOhms(nodes, TABLES.signals()) / (2 * ohmsPerMetre);
        assertEquals(metres, most, 0.025 * metres);
    }

    /** 0.25 mm2 of 90 mohm/m with 32 nodes: 118 x 20000 / (20000 + 31 x 118) x (1.5/1.1 - 1) / 0.18 = 202 m (CiA 303-1). */
    @Test
    void thirtyTwoNodesOnAQuarterSquareReachTwoHundredMetres() {
        assertEquals(202, LineFormulas.allowedOhms(32, TABLES.signals()) / 0.18, 0.5);
    }

    /** 20 kohm (1/45 - 1/60) = 111, near the 110 nodes everybody quotes. */
    @Test
    void aDriverServesAHundredAndElevenNodes() {
        assertEquals(111, LineFormulas.allowedNodes(TABLES.signals()));
    }

    /** Published limits: ISO 11898, CiA, SAE J1939-11, -14 as the documents named in can-limits.csv restate them. */
    @ParameterizedTest
    @CsvSource({
        "iso-11898-2,1000,40,0.3,,30",
        "cia,1000,25,1.5,7.5,",
        "cia,500,100,5.5,27.5,",
        "cia,125,500,22,110,",
        "cia,50,1000,55,275,",
        "sae-j1939-11,250,40,1,,30",
        "sae-j1939-14,500,40,1,,30",
        "isolated,1000,37,0.3,,",
        "cia,800,50,2.5,12.5,",
        "cia,100,650,,,",
        "cia,10,5000,,,",
        "isolated,500,130,,,",
        "isolated,250,270,,,",
        "isolated,125,570,,,",
        "sae-j1939-15,250,40,3,,10",
        "body-builder,125,,2,,32"
    })
    void theLimitsAreThePublishedOnes(
            String set, double kilobits, Double bus, Double stub, Double stubTotal, Double nodes) {
        BusLimit limit = TABLES.signals().limit(set, 1000 * kilobits).orElseThrow();
        assertEquals(1000 * kilobits, limit.bitsPerSecond(), EXACT);
        assertEquals(Optional.ofNullable(bus), limit.busMetres().map(CitedValue::value));
        assertEquals(Optional.ofNullable(stub), limit.stubMetres().map(CitedValue::value));
        assertEquals(Optional.ofNullable(stubTotal), limit.stubTotalMetres().map(CitedValue::value));
        assertEquals(Optional.ofNullable(nodes), limit.nodes().map(CitedValue::value));
    }

    /** ISO 11898-2 and SAE J1939-11: 120 ohm (108 to 132) at each end, so 60 ohm at rest; least load 45 ohm; load of 40 %. */
    @Test
    void theElectricalFiguresAreThePublishedOnes() {
        assertEquals(120, figure(BusFigure.TERMINATION), EXACT);
        assertEquals(108, figure(BusFigure.TERMINATION_LEAST), EXACT);
        assertEquals(132, figure(BusFigure.TERMINATION_MOST), EXACT);
        assertEquals(45, figure(BusFigure.LOAD_LEAST_OHMS), EXACT);
        assertEquals(20_000, figure(BusFigure.RECEIVER_LEAST_OHMS), EXACT);
        assertEquals(0.40, figure(BusFigure.LOAD_MOST), EXACT);
    }

    private static double figure(String item) {
        return TABLES.signals().figure(item).value();
    }

    /** A rate between two rows is held against the stricter; above the highest nothing is listed. */
    @Test
    void aRateBetweenTwoRowsTakesTheFasterOne() {
        assertEquals(
                500_000, TABLES.signals().limit("cia", 300_000).orElseThrow().bitsPerSecond(), EXACT);
        assertTrue(TABLES.signals().limit("sae-j1939-11", 500_000).isEmpty());
    }

    /**
     * U1 - 4 m - splice - 6 m - U3, U2 0.5 m off the splice, both lines alike, 120 ohm in U1 and U3. The trunk is 10 m with
     * 4 x 0.1 = 0.4 ohm there and back; at rest the meter reads (120 + 0.2) || (120 + 0.2) + 0.2 = 60.3 ohm at U2 and
     * 120 || 120.4 = 60.1 ohm at U1.
     */
    @Test
    void aBusOfThreeNodesHasItsTrunkStubAndRestResistance() {
        BusWiring wiring = study(three(4, 6, 0.5), bus(List.of(inside("U1"), inside("U3"))));
        assertEquals(10, wiring.trunkMetres(), EXACT);
        assertEquals(0.5, wiring.stubsMetres(), EXACT);
        assertEquals(0.4, wiring.loopOhms().orElseThrow(), 1e-6);
        assertEquals(
                List.of(0.0, 4.0, 10.0),
                wiring.nodes().stream()
                        .map(each -> each.alongMetres().orElseThrow())
                        .toList());
        assertEquals(
                List.of(0.0, 0.5, 0.0),
                wiring.nodes().stream()
                        .map(each -> each.stubMetres().orElseThrow())
                        .toList());
        assertEquals(60.3, wiring.nodes().get(1).restOhms().orElseThrow(), 1e-4);
        assertEquals(120 * 120.4 / 240.4, wiring.nodes().get(0).restOhms().orElseThrow(), 1e-4);
        assertEquals(List.of(Kind.NOT_TWISTED), kinds(wiring));
        assertEquals(6, wiring.untwisted().size());
    }

    @Test
    void lengthsBeyondTheLimitsAreTold() {
        assertTrue(kinds(study(three(4, 6, 1.2), bus(List.of(inside("U1"), inside("U3")))))
                .contains(Kind.STUB_TOO_LONG));
        assertTrue(kinds(study(three(20, 21, 0.5), bus(List.of(inside("U1"), inside("U3")))))
                .contains(Kind.TOO_LONG));
    }

    @Test
    void terminationsAreTwoAndOfTheRightResistance() {
        assertTrue(kinds(study(three(4, 6, 0.5), bus(List.of(inside("U1"))))).contains(Kind.TERMINATION_COUNT));
        assertTrue(kinds(study(three(4, 6, 0.5), bus(List.of(inside("U1"), inside("U2"), inside("U3")))))
                .contains(Kind.TERMINATION_COUNT));
        DataBus.Termination one =
                new DataBus.Termination(60, inside("U1").high(), inside("U1").low(), Optional.empty());
        assertTrue(
                kinds(study(three(4, 6, 0.5), bus(List.of(one, inside("U3"))))).contains(Kind.TERMINATION_OHMS));
    }

    /** Terminations in U1 and at the splice: U3 lies 6 m beyond. */
    @Test
    void aNodeBeyondATerminationIsTold() {
        DataBus.Termination middle = new DataBus.Termination(
                120,
                new WireEnd.AtSplice(new SpliceId("SH")),
                new WireEnd.AtSplice(new SpliceId("SL")),
                Optional.empty());
        BusWiring wiring = study(three(4, 6, 0.5), bus(List.of(inside("U1"), middle)));
        BusProblem beyond = wiring.problems().stream()
                .filter(each -> each.kind() == Kind.TERMINATION_NOT_AT_END)
                .findFirst()
                .orElseThrow();
        assertEquals(
                "U3 lies 6 m beyond a termination of bus CAN1", beyond.words().english());
        assertTrue(kinds(wiring).stream().noneMatch(kind -> kind == Kind.STUB_TOO_LONG));
    }

    @Test
    void linesThatAreCutSwappedShortedOrARingAreTold() {
        List<DataBus.Termination> ends = List.of(inside("U1"), inside("U3"));
        HarnessSketch cut = units().splice("SH", 0.0001).splice("SL", 0.0001);
        wire(cut, "W1", "U1.H", "SH", 4);
        wire(cut, "W2", "U1.L", "SL", 4);
        wire(cut, "W3", "SH", "U3.H", 6);
        wire(cut, "W4", "SL", "U3.L", 6);
        wire(cut, "W5", "SH", "U2.H", 0.5);
        BusWiring missing = study(cut.harness(), bus(ends));
        assertTrue(missing.problems().get(0).words().english().startsWith("The low line of U2 is not joined"));

        HarnessSketch swapped = units().splice("SH", 0.0001).splice("SL", 0.0001);
        wire(swapped, "W1", "U1.H", "SH", 4);
        wire(swapped, "W2", "U1.L", "SL", 4);
        wire(swapped, "W3", "SH", "U3.H", 6);
        wire(swapped, "W4", "SL", "U3.L", 6);
        wire(swapped, "W5", "SH", "U2.L", 0.5);
        wire(swapped, "W6", "SL", "U2.H", 0.5);
        assertTrue(kinds(study(swapped.harness(), bus(ends))).contains(Kind.SWAPPED));

        HarnessSketch ring = three(4, 6, 0.5, new HarnessSketch());
        wire(ring, "W9", "U1.H", "U3.H", 10.5);
        assertTrue(kinds(study(ring.harness(), bus(ends))).contains(Kind.LOOP));

        HarnessSketch shorted = three(4, 6, 0.5, new HarnessSketch());
        wire(shorted, "W9", "SH", "SL", 0.1);
        assertTrue(kinds(study(shorted.harness(), bus(ends))).contains(Kind.SHORTED));
    }

    /** U4 on the middle of U2's stub. */
    @Test
    void aStubOnAStubIsTold() {
        HarnessSketch sketch = units().splice("SH", 0.0001)
                .splice("SL", 0.0001)
                .splice("TH", 0.0001)
                .splice("TL", 0.0001);
        for (String line : List.of("H", "L")) {
            wire(sketch, "A" + line, "U1." + line, "S" + line, 4);
            wire(sketch, "B" + line, "S" + line, "U3." + line, 6);
            wire(sketch, "C" + line, "S" + line, "T" + line, 0.3);
            wire(sketch, "D" + line, "T" + line, "U2." + line, 0.2);
            wire(sketch, "E" + line, "T" + line, "U4." + line, 0.4);
        }
        DataBus all = bus(List.of(inside("U1"), inside("U3")), "U1", "U2", "U3", "U4");
        BusWiring wiring = study(sketch.harness(), all);
        assertTrue(kinds(wiring).contains(Kind.STUB_ON_STUB));
        // Shared wire counted once: 0.3 + 0.2 + 0.4 m.
        assertEquals(0.9, wiring.stubsMetres(), EXACT);
    }

    private static List<Kind> kinds(BusWiring wiring) {
        return wiring.problems().stream().map(BusProblem::kind).toList();
    }

    private static DataBus.Termination inside(String unit) {
        ComponentId id = new ComponentId(unit);
        return new DataBus.Termination(
                120, new WireEnd.AtTerminal(id, "H"), new WireEnd.AtTerminal(id, "L"), Optional.empty());
    }

    private static DataBus bus(List<DataBus.Termination> terminations, String... units) {
        List<DataBus.Node> nodes = new ArrayList<>();
        for (String unit : units.length == 0 ? new String[] {"U1", "U2", "U3"} : units) {
            nodes.add(DataBus.Node.of(new ComponentId(unit), "H", "L"));
        }
        return new DataBus(
                new BusId("CAN1"),
                "Bus",
                500_000,
                11,
                Optional.of("sae-j1939-14"),
                nodes,
                terminations,
                Optional.empty(),
                List.of());
    }

    private static HarnessSketch units() {
        return units(new HarnessSketch());
    }

    private static HarnessSketch units(HarnessSketch sketch) {
        for (String unit : List.of("U1", "U2", "U3", "U4")) {
            sketch.component(
                    unit,
                    new ControlUnit(
                            List.of(
                                    Pin.of("H", PinRole.BUS_HIGH),
                                    Pin.of("L", PinRole.BUS_LOW),
                                    Pin.of("X", PinRole.SPARE)),
                            0,
                            OptionalDouble.empty(),
                            OptionalDouble.empty()));
        }
        return sketch;
    }

    private static Harness three(double first, double second, double stub) {
        return three(first, second, stub, new HarnessSketch()).harness();
    }

    private static HarnessSketch three(double first, double second, double stub, HarnessSketch sketch) {
        units(sketch).splice("SH", 0).splice("SL", 0);
        for (String line : List.of("H", "L")) {
            wire(sketch, "A" + line, "U1." + line, "S" + line, first);
            wire(sketch, "B" + line, "S" + line, "U3." + line, second);
            wire(sketch, "C" + line, "S" + line, "U2." + line, stub);
        }
        return sketch;
    }

    private static void wire(HarnessSketch sketch, String id, String from, String to, double metres) {
        sketch.run(id, from, to, metres);
    }

    private static BusWiring study(Harness harness, DataBus bus) {
        SortedMap<WireId, Double> lengths = new TreeMap<>();
        harness.wires()
                .all()
                .forEach(wire -> lengths.put(wire.id(), wire.lengthMetres().orElseThrow()));
        Network network = NetworkBuilder.build(
                harness, HarnessSketch.state(), wire -> wire.measuredOhms().orElse(0.1), TABLES);
        return BusWiringStudy.of(harness, network, lengths, TABLES.signals(), bus);
    }
}
