package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;

/** Converters and reference supplies, whose inputs take what their outputs give. */
@BesideOthers
class ConvertersTest {

    private static Net converter(Net net, String inPlus, String inMinus, String outMinus, String outPlus) {
        return net.branch(
                        "U.out", BranchKind.REGULATED_OUTPUT, outMinus, outPlus, Law.VoltageSource.regulated(5, 0, 10))
                .branch(
                        "U.in",
                        BranchKind.REGULATED_INPUT,
                        inPlus,
                        inMinus,
                        new Law.PowerOf(new BranchId("U.out"), 0.8));
    }

    @Test
    void anIsolatedConverterTakesItsOutputPowerOverItsEfficiency() {
        // 5 V x 8 A = 40 W out, 50 W in; 12.5 V - 0.5 ohm x I: V (12.5 - V) / 0.5 = 50, V = 10, 5 A
        Net net = new Net().battery("B", "0", "t", 12.5, 0.5);
        Solved solved =
                converter(net, "t", "0", "n", "p").heater("L", "p", "n", 0.625).solve();
        solved.hasAmps("L", 8)
                .hasAmps("U.out", 8)
                .hasAmps("U.in", 5)
                .hasVolts("t", 10)
                .hasVolts("p", 5);
        assertEquals(IslandStatus.FLOATING, solved.status("p"));
        Solved.near(50, solved.flow("U.in").watts(), "input power");
        Solved.near(-40, solved.flow("U.out").watts(), "output power");
    }

    @Test
    void aConverterWithACommonReturnSharesItsGroundWire() {
        // ground wire 50 mohm; output 5 V, 4 A constant: 20 W out, 25 W in, independent of the ground shift.
        // All current comes back by the ground wire: only the input current, the output's goes round inside.
        Net net = new Net().battery("B", "0", "t", 12, 0).wire("G", "g", "0", 0.05);
        Solved solved =
                converter(net, "t", "g", "g", "p").current("L", "p", "g", 4).solve();
        double volts = (12 + Math.sqrt(144 - 4 * 0.05 * 25)) / 2;
        Solved.near(25 / volts, solved.amps("U.in"), "input current");
        solved.hasAmps("G", 25 / volts);
        Solved.near(5, solved.volts("p") - solved.volts("g"), "output voltage");
    }

    @Test
    void anOutputThatReturnsThroughTheInputsGroundWireIsStillBalanced() {
        // the load's own return goes to the battery, so its 4 A pass the converter's ground wire backwards
        Net net = new Net().battery("B", "0", "t", 12, 0.02).wire("G", "g", "0", 0.05);
        Solved solved =
                converter(net, "t", "g", "g", "p").heater("L", "p", "0", 1.25).solve();
        double out = solved.amps("L");
        Solved.near(5 * out / 0.8, solved.flow("U.in").watts(), "input power");
        Solved.near(solved.amps("U.in") - out, solved.amps("G"), "current of the ground wire");
        Solved.near(5 + 0.05 * (solved.amps("U.in") - out), 1.25 * out, "loop of the output");
    }

    @Test
    void aConverterWhoseInputIsNotFedGivesNothing() {
        Net net = new Net().battery("B", "0", "a", 12, 0).open("S", "a", "t");
        Solved solved =
                converter(net, "t", "0", "n", "p").heater("L", "p", "n", 1).solve();
        assertEquals(IslandStatus.NO_SOURCE, solved.status("p"));
        assertFalse(solved.hasVolts("p"));
        solved.hasAmps("L", 0).hasAmps("U.in", 0);
    }

    @Test
    void aConverterThatAsksTooMuchOfItsFeedIsNamed() {
        // 40 W out, 50 W in; 12 V behind 1 ohm brings at most 36 W
        Net net = new Net().battery("B", "0", "t", 12, 1);
        Solved solved =
                converter(net, "t", "0", "n", "p").heater("L", "p", "n", 0.625).solve();
        assertEquals(IslandStatus.OVERLOADED, solved.status("t"));
        assertEquals(new BranchId("U.in"), solved.island("t").cause().orElseThrow());
    }

    @Test
    void aConverterAtItsLimitGivesItsLimit() {
        // 10 A into 0.25 ohm: 2.5 V, 25 W out, 31.25 W in
        Net net = new Net().battery("B", "0", "t", 12.5, 0);
        converter(net, "t", "0", "n", "p")
                .heater("L", "p", "n", 0.25)
                .solve()
                .hasAmps("L", 10)
                .hasAmps("U.in", 2.5);
    }

    @Test
    void aReferenceSupplyTakesTheCurrentItGives() {
        // 5 V over 1 kohm: 5 mA out of the pin and 5 mA from the supply to ground
        Solved solved = new Net()
                .battery("B", "0", "t", 12, 0)
                .branch("U.ref", BranchKind.REGULATED_OUTPUT, "g", "p", Law.VoltageSource.regulated(5, 0, 0.1))
                .branch("U.ref~input", BranchKind.REGULATED_INPUT, "t", "g", new Law.CurrentOf(new BranchId("U.ref")))
                .wire("G", "g", "0", 0.1)
                .branch("N", BranchKind.SENSOR, "p", "g", new Law.Resistance(1000))
                .solve();
        solved.hasAmps("N", 0.005).hasAmps("U.ref~input", 0.005).hasAmps("G", 0.005);
    }

    @Test
    void twoConvertersInARowTakeThePowerOfBoth() {
        // 5 V x 2 A = 10 W; first converter 12.5 W at 20 V; second 12.5 / 0.5 = 25 W from 25 V: 1 A
        Net net = new Net().battery("B", "0", "t", 25, 0);
        net.branch("V.out", BranchKind.REGULATED_OUTPUT, "m", "q", Law.VoltageSource.regulated(20, 0, 10))
                .branch("V.in", BranchKind.REGULATED_INPUT, "t", "0", new Law.PowerOf(new BranchId("V.out"), 0.5));
        converter(net, "q", "m", "n", "p")
                .heater("L", "p", "n", 2.5)
                .solve()
                .hasAmps("U.in", 0.625)
                .hasAmps("V.in", 1)
                .hasAmps("B", 1);
    }
}
