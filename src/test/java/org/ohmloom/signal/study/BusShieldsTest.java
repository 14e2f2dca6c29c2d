package org.ohmloom.signal.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.ohmloom.signal.study.BusLine.bus;
import static org.ohmloom.signal.study.BusLine.inside;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/** SAE J1939-11 asks for a shielded pair with its drain grounded at one place (from memory). */
@BesideOthers
class BusShieldsTest {

    /** The bus of three units in three pairs, shielded or not, and drains from the middle to so many grounds. */
    private static List<String> problems(boolean shielded, int grounds) {
        HarnessSketch sketch = BusLine.of(4, 6, 0.5).splice("SD", 0).body("FRAME");
        Harness plain = sketch.harness();
        for (String run : List.of("A", "B", "C")) {
            CableId cable = new CableId("C" + run);
            sketch.with(Cable.pair(cable, "Bus", shielded, Optional.empty()));
            for (String line : List.of("H", "L")) {
                sketch.with(plain.wires().get(new WireId(run + line)).inCable(Optional.of(cable)));
            }
        }
        for (int k = 1; k <= Math.max(1, grounds); k++) {
            sketch.ground("G" + k, "FRAME", 0.001);
            sketch.wire(
                    "D" + k,
                    "SD",
                    grounds == 0 ? "loose" : "G" + k,
                    0.1,
                    SignalClass.SHIELD,
                    OptionalDouble.of(1),
                    OptionalDouble.empty());
            Wire drain = sketch.harness().wires().get(new WireId("D" + k));
            sketch.with(drain.inCable(Optional.of(new CableId("CA"))));
        }
        Harness harness = sketch.with(bus("sae-j1939-11", 250_000, inside("U1", 120), inside("U3", 120)))
                .harness();
        return BusLine.reading(harness).wiring().problems().stream()
                .map(each -> each.words().english())
                .toList();
    }

    @Test
    void aDrainGroundedAtOnePlaceIsRight() {
        assertEquals(List.of(), problems(true, 1));
    }

    @Test
    void aDrainGroundedNowhereOrTwiceIsNot() {
        assertEquals(List.of("The shield of bus CAN1 is grounded at no place, not at one"), problems(true, 0));
        assertEquals(List.of("The shield of bus CAN1 is grounded at 2 places, not at one"), problems(true, 2));
    }

    @Test
    void aPairWithoutAShieldIsNamed() {
        assertEquals(List.of("Bus CAN1 has no shield in CA, CB, CC"), problems(false, 1));
    }
}
