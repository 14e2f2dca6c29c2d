package org.ohmloom.signal.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.ohmloom.signal.study.BusLine.bus;
import static org.ohmloom.signal.study.BusLine.inside;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.BusId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.SignalClass;

/** Limits of a bus just kept and just passed; lengths and counts as table can-limits has them. */
@BesideOthers
class BusLimitsTest {
    private static final DataBus.Termination[] ENDS = {inside("U1", 120), inside("U3", 120)};

    private static List<String> problems(Harness harness) {
        return BusLine.reading(harness).wiring().problems().stream()
                .map(each -> each.words().english())
                .filter(words -> !words.contains("not twisted"))
                .toList();
    }

    /** U1 - splice - the last, all others on stubs of one length, m. */
    private static Harness star(int nodes, double stubMetres, String limits, double bitsPerSecond) {
        HarnessSketch sketch = new HarnessSketch().splice("SH", 0).splice("SL", 0);
        List<DataBus.Node> all = new ArrayList<>();
        List<Pin> pins = List.of(Pin.of("H", PinRole.BUS_HIGH), Pin.of("L", PinRole.BUS_LOW));
        for (int k = 1; k <= nodes; k++) {
            String unit = "U" + k;
            sketch.component(unit, new ControlUnit(pins, 0, OptionalDouble.empty(), OptionalDouble.empty()));
            for (String line : List.of("H", "L")) {
                sketch.run(line + k, unit + "." + line, "S" + line, k == 1 || k == nodes ? 5 : stubMetres);
            }
            all.add(DataBus.Node.of(new ComponentId(unit), "H", "L"));
        }
        DataBus bus = new DataBus(
                new BusId("CAN1"),
                "Bus",
                bitsPerSecond,
                11,
                Optional.of(limits),
                all,
                List.of(inside("U1", 120), inside("U" + nodes, 120)),
                Optional.empty(),
                List.of());
        return sketch.with(bus).harness();
    }

    @Test
    void stubsTogetherHaveALimitOfTheirOwn() {
        // 1 Mbit/s: each 1.5 m, together 7.5 m (CiA); five of 1.5 m are 7.5 m, six of 1.3 m are 7.8 m
        assertEquals(List.of(), problems(star(7, 1.5, "cia", 1_000_000)));
        assertEquals(
                List.of("The stubs of bus CAN1 are 7.8 m together, more than 7.5 m at 1000 kbit/s"),
                problems(star(8, 1.3, "cia", 1_000_000)));
    }

    @Test
    void tenNodesMayBeOnABusOfUnshieldedPairsAndElevenMayNot() {
        // SAE J1939-15, from memory
        assertEquals(List.of(), problems(star(10, 0.5, "sae-j1939-15", 250_000)));
        assertEquals(List.of("Bus CAN1 has 11 nodes, more than 10"), problems(star(11, 0.5, "sae-j1939-15", 250_000)));
    }

    @Test
    void theLinesMayHaveSoMuchResistanceThatADriverStillReachesAllReceivers() {
        // CiA 303-1, three nodes: 118 x 20000 / (20000 + 2 x 118) x (1.5 / 1.1 - 1) = 42.4 ohm there and back over four
        // wires
        assertEquals(List.of(), problems(ofOhms(10.5)));
        assertEquals(
                List.of("The lines of bus CAN1 have 43 Ω end to end and back, more than 42.4 Ω for 3 nodes"),
                problems(ofOhms(10.75)));
    }

    private static Harness ofOhms(double ohms) {
        HarnessSketch sketch = BusLine.of(4, 6, 0.5);
        for (String line : List.of("H", "L")) {
            wire(sketch, "A" + line, "U1." + line, "S" + line, ohms);
            wire(sketch, "B" + line, "S" + line, "U3." + line, ohms);
        }
        return sketch.with(bus("cia", 250_000, ENDS)).harness();
    }

    private static void wire(HarnessSketch sketch, String id, String from, String to, double ohms) {
        sketch.wire(id, from, to, ohms, SignalClass.DATA_BUS, OptionalDouble.of(5), OptionalDouble.empty());
    }

    @Test
    void aRateTheSetDoesNotListIsTold() {
        assertTrue(problems(BusLine.of(4, 6, 0.5)
                        .with(bus("sae-j1939-15", 500_000, ENDS))
                        .harness())
                .contains("sae-j1939-15 lists no length for bus CAN1 at 500 kbit/s"));
    }

    @Test
    void aBusWithoutAnyWireJoinsNobody() {
        Harness bare = BusLine.of(4, 6, 0.5).with(bus("cia", 250_000, ENDS)).harness();
        Harness cut = bare.withoutAll(bare.wires().ids());
        assertEquals(
                List.of("U1 is not joined to bus CAN1", "U2 is not joined to bus CAN1", "U3 is not joined to bus CAN1"),
                problems(cut));
    }
}
