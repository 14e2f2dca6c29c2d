package org.ohmloom.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;

/** Control units on one data bus are referenced to the first of them, each once. */
@BesideOthers
class BusNodeGroundsTest {

    private static ControlUnit unit() {
        List<Pin> pins = List.of(
                Pin.of("SUP", PinRole.SUPPLY),
                Pin.of("GND", PinRole.GROUND),
                Pin.of("H", PinRole.BUS_HIGH),
                Pin.of("L", PinRole.BUS_LOW));
        return new ControlUnit(pins, 0.2, OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static HarnessSketch units(int count) {
        HarnessSketch sketch = new HarnessSketch().battery("BAT1", 12, 0.01);
        for (int k = 1; k <= count; k++) {
            sketch.component("U" + k, unit())
                    .wire("P" + k, "BAT1.+", "U" + k + ".SUP", 0.01)
                    .wire("G" + k, "U" + k + ".GND", "BAT1.-", 0.01);
        }
        return sketch;
    }

    private static List<String> nodes(HarnessSketch sketch) {
        return ReferencePoints.of(sketch.network(), sketch.harness()).stream()
                .filter(point -> point.kind() == ReferencePoint.Kind.BUS_NODE_GROUND)
                .map(point -> point.owner() + " against " + point.against())
                .toList();
    }

    @Test
    void everyUnitOfABusIsMeasuredAgainstTheFirst() {
        HarnessSketch line = units(3).wire("H1", "U1.H", "U2.H", 0.05)
                .wire("H2", "U2.H", "U3.H", 0.05)
                .wire("L1", "U1.L", "U2.L", 0.05)
                .wire("L2", "U2.L", "U3.L", 0.05);
        assertEquals(List.of("U2 against U1", "U3 against U1"), nodes(line));
    }

    @Test
    void unitsOfTwoBusesAreNotMeasuredAgainstEachOther() {
        HarnessSketch pairs = units(4).wire("H1", "U1.H", "U3.H", 0.05).wire("H2", "U2.H", "U4.H", 0.05);
        assertEquals(List.of("U3 against U1", "U4 against U2"), nodes(pairs));
    }

    @Test
    void aUnitThatNothingJoinsToTheBusHasNoReferenceThere() {
        assertEquals(List.of(), nodes(units(2)));
        assertEquals(List.of(), nodes(units(2).wire("X", "U1.H", "loose", 0.05)));
    }
}
