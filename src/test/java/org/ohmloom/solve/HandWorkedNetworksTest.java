package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/** Networks of batteries and resistances small enough to work by hand. */
@BesideOthers
class HandWorkedNetworksTest {

    @Test
    void aDividerSharesTheVoltageInTheRatioOfItsResistances() {
        // 12 V over 1 + 2 + 3 = 6 ohm: 2 A; 4 V and 6 V over the two loads
        new Net()
                .battery("B", "0", "a", 12, 1)
                .heater("R2", "a", "b", 2)
                .heater("R3", "b", "0", 3)
                .solve()
                .hasAmps("B", 2)
                .hasVolts("a", 10)
                .hasVolts("b", 6);
    }

    @Test
    void twoEqualLampsInParallelShareTheCurrent() {
        // 12 V without resistance, two 6 ohm lamps: 2 A each, 4 A from the battery, 48 W given
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .heater("A", "a", "0", 6)
                .heater("C", "a", "0", 6)
                .solve();
        solved.hasAmps("A", 2).hasAmps("C", 2).hasAmps("B", 4);
        Solved.near(24, solved.flow("A").watts(), "power of a lamp");
        Solved.near(-48, solved.flow("B").watts(), "power of the battery");
    }

    @Test
    void ofTwoBatteriesInParallelTheStrongerOneChargesTheOther() {
        // 12.6 V and 12.2 V behind 10 mohm each: 0.4 V / 20 mohm = 20 A around, 12.4 V at both
        new Net()
                .battery("B1", "0", "a", 12.6, 0.01)
                .battery("B2", "0", "a", 12.2, 0.01)
                .solve()
                .hasAmps("B1", 20)
                .hasAmps("B2", -20)
                .hasVolts("a", 12.4);
    }

    @Test
    void anUnbalancedBridgeCarriesCurrentInItsMiddle() {
        // Arms 1 and 2 ohm on the left, 2 and 1 ohm on the right, 1 ohm between, 7 V without resistance.
        // By symmetry Va + Vb = 7; (7 - Va)/1 = Va/2 + (Va - Vb)/1 gives Va = 4, Vb = 3: 1 A in the middle,
        // 3 A + 2 A = 5 A in all
        new Net()
                .battery("B", "0", "t", 7, 0)
                .wire("W1", "t", "a", 1)
                .wire("W2", "a", "0", 2)
                .wire("W3", "t", "b", 2)
                .wire("W4", "b", "0", 1)
                .wire("W5", "a", "b", 1)
                .solve()
                .hasVolts("a", 4)
                .hasVolts("b", 3)
                .hasAmps("W5", 1)
                .hasAmps("B", 5);
    }

    @Test
    void parallelWiresShareInTheRatioOfTheirConductances() {
        // 10, 20 and 20 mohm in parallel make 5 mohm; with 1.195 ohm 12 V give 10 A, split 5, 2.5, 2.5
        new Net()
                .battery("B", "0", "a", 12, 0)
                .wire("W1", "a", "b", 0.01)
                .wire("W2", "a", "b", 0.02)
                .wire("W3", "a", "b", 0.02)
                .heater("L", "b", "0", 1.195)
                .solve()
                .hasAmps("W1", 5)
                .hasAmps("W2", 2.5)
                .hasAmps("W3", 2.5);
    }

    @Test
    void aReturnThroughWireAndChassisDividesBetweenThem() {
        // 5.97 ohm load, return 40 mohm by wire in parallel with 3 x 40 mohm by chassis: 30 mohm together;
        // 12 V / 6 ohm = 2 A, of which 1.5 A by wire and 0.5 A by chassis; load - stands at 60 mV
        new Net()
                .battery("B", "0", "a", 12, 0)
                .heater("L", "a", "r", 5.97)
                .wire("W", "r", "0", 0.04)
                .wire("G1", "r", "c", 0.04)
                .wire("C", "c", "d", 0.04)
                .wire("G2", "d", "0", 0.04)
                .solve()
                .hasVolts("r", 0.06)
                .hasAmps("W", 1.5)
                .hasAmps("C", 0.5);
    }

    @Test
    void voltagesAreRelativeToTheNegativeTerminalOfTheFirstSource() {
        // two 12 V batteries in series: the upper one's negative terminal stands at 12 V
        new Net()
                .battery("B1", "n", "m", 12, 0)
                .battery("B2", "m", "p", 12, 0)
                .heater("L", "p", "n", 24)
                .solve()
                .hasVolts("n", 0)
                .hasVolts("m", 12)
                .hasVolts("p", 24)
                .hasAmps("B2", 1);
    }

    @Test
    void anIslandWithoutSourceHasNoVoltagesAndNoCurrent() {
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0.01)
                .heater("L", "a", "0", 6)
                .open("S", "a", "x")
                .heater("M", "x", "y", 6)
                .point("alone")
                .solve();
        assertEquals(IslandStatus.SOLVED, solved.status("a"));
        assertEquals(IslandStatus.NO_SOURCE, solved.status("x"));
        assertEquals(IslandStatus.NO_SOURCE, solved.status("alone"));
        assertFalse(solved.hasVolts("x"));
        assertEquals(0, solved.amps("M"));
        assertEquals(0, solved.drop("S"), "an open switch between two islands");
        assertFalse(solved.island("x").powered());
    }

    @Test
    void aSecondBatteryOfItsOwnFloatsAndIsMeasuredFromItsOwnNegative() {
        Solved solved = new Net()
                .battery("B1", "0", "a", 12, 0)
                .heater("L1", "a", "0", 6)
                .battery("B2", "n", "p", 24, 0)
                .heater("L2", "p", "n", 6)
                .solve();
        assertEquals(IslandStatus.FLOATING, solved.status("p"));
        assertTrue(solved.island("p").sentence().contains("measured from n, the negative terminal of B2"));
        solved.hasVolts("n", 0).hasVolts("p", 24).hasAmps("L2", 4);
    }

    @Test
    void anOpenSwitchHasTheVoltageOfWhatItHoldsOff() {
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .open("S", "a", "b")
                .heater("L", "b", "0", 6)
                .solve();
        Solved.near(12, solved.drop("S"), "voltage over the switch");
        solved.hasAmps("S", 0).hasAmps("L", 0).hasVolts("b", 0);
        assertTrue(solved.flow("S").ohms().isEmpty());
    }

    @Test
    void onlyPassagesPublishTheirResistance() {
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .wire("W", "a", "b", 0.5)
                .heater("L", "b", "0", 5.5)
                .solve();
        assertEquals(0.5, solved.flow("W").ohms().getAsDouble());
        assertTrue(solved.flow("L").ohms().isEmpty());
        assertTrue(solved.flow("B").ohms().isEmpty());
        Solved.near(2, solved.flow("W").watts(), "2 A squared times 0.5 ohm");
    }
}
