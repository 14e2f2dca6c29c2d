package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;

/** Lamps, diodes, limited sources and loads of constant current, each worked by hand. */
@BesideOthers
class NonlinearNetworksTest {

    @Test
    void aConstantCurrentFlowsWhateverTheVoltage() {
        // 5 A through 0.2 ohm lose 1 V of 12
        new Net()
                .battery("B", "0", "a", 12, 0)
                .wire("W", "a", "b", 0.2)
                .current("L", "b", "0", 5)
                .solve()
                .hasAmps("L", 5)
                .hasVolts("b", 11);
    }

    @Test
    void threeConstantCurrentsOnATwoEndedFeed() {
        // A ring a-b-c-d-a of 10 mohm each, fed at a with 12 V; 3, 6, 3 A drawn at b, c, d. By symmetry 6 A each way;
        // Vb = 12 - 0.06, Vc = Vb - 0.03
        new Net()
                .battery("B", "0", "a", 12, 0)
                .wire("W1", "a", "b", 0.01)
                .wire("W2", "b", "c", 0.01)
                .wire("W3", "c", "d", 0.01)
                .wire("W4", "d", "a", 0.01)
                .current("L1", "b", "0", 3)
                .current("L2", "c", "0", 6)
                .current("L3", "d", "0", 3)
                .solve()
                .hasAmps("W1", 6)
                .hasAmps("W2", 3)
                .hasAmps("W3", -3)
                .hasVolts("b", 11.94)
                .hasVolts("c", 11.91);
    }

    @Test
    void aConstantCurrentIsNotDrawnFromAVoltageTheWrongWayRound() {
        new Net()
                .battery("B", "0", "a", 12, 0.1)
                .current("L", "0", "a", 5)
                .solve()
                .hasAmps("L", 0);
    }

    @Test
    void aConstantCurrentBehindAnOpenSwitchIsNotDrawn() {
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0.1)
                .open("S", "a", "b")
                .current("L", "b", "0", 5)
                .solve()
                .hasAmps("L", 0);
        assertEquals(0, solved.volts("b"), 1e-9);
    }

    @Test
    void aFeedTooThinForTheCurrentEndsOnTheKnee() {
        // 12 V through 12 ohm bring at most 1 A. On the knee I = 2 A x V / 10 mV = 200 V:
        // (12 - V) / 12 = 200 V gives V = 12 / 2401
        double volts = 12.0 / 2401;
        new Net()
                .battery("B", "0", "a", 12, 0)
                .wire("W", "a", "b", 12)
                .current("L", "b", "0", 2)
                .solve()
                .hasVolts("b", volts)
                .hasAmps("L", 200 * volts);
    }

    @Test
    void aLampBehindAWireSettlesWhereBisectionSaysItDoes() {
        // 5 A at 12 V, 0.2 ohm of wire, 12 V: root of (12 - V) / 0.2 = 5 (V / 12)^0.55
        double low = 0;
        double high = 12;
        for (int halving = 0; halving < 200; halving++) {
            double volts = (low + high) / 2;
            if ((12 - volts) / 0.2 > 5 * Math.pow(volts / 12, 0.55)) {
                low = volts;
            } else {
                high = volts;
            }
        }
        new Net()
                .battery("B", "0", "a", 12, 0)
                .wire("W", "a", "b", 0.2)
                .lamp("L", "b", "0", 5, 12)
                .solve()
                .hasVolts("b", low)
                .hasAmps("L", (12 - low) / 0.2);
    }

    @Test
    void twoEqualLampsInSeriesTakeHalfTheVoltageEach() {
        // 6 V each: 5 A x 0.5^0.55
        new Net()
                .battery("B", "0", "a", 12, 0)
                .lamp("L1", "a", "b", 5, 12)
                .lamp("L2", "0", "b", 5, 12)
                .solve()
                .hasVolts("b", 6)
                .hasAmps("L1", 5 * Math.pow(0.5, 0.55))
                .hasAmps("L2", -5 * Math.pow(0.5, 0.55));
    }

    @Test
    void theHigherOfTwoSourcesFeedsThroughItsDiode() {
        // 13.5 V - 0.5 V over 0.01 + 1.29 ohm: 10 A, 12.9 V at the load; the other diode sees 12.2 V and blocks
        Solved solved = new Net()
                .battery("B1", "0", "a", 13.5, 0)
                .battery("B2", "0", "b", 12.2, 0)
                .diode("D1", "a", "c", 0.5, 0.01)
                .diode("D2", "b", "c", 0.5, 0.01)
                .heater("L", "c", "0", 1.29)
                .solve();
        solved.hasAmps("D1", 10).hasAmps("D2", 0).hasAmps("B2", 0).hasVolts("c", 12.9);
        assertTrue(solved.flow("D1").ohms().isEmpty());
    }

    @Test
    void twoDiodesShareWhenTheirSourcesAreNearEachOther() {
        // 12.6 V and 12.5 V, 0.5 V + 0.1 ohm each, load 1.2 ohm. At 11.0 V: (12.1 - V)/0.1 + (12.0 - V)/0.1 = V/1.2
        // 241 = V (20 + 1/1.2), V = 11.568; 5.32 A and 4.32 A
        double volts = 241 / (20 + 1 / 1.2);
        new Net()
                .battery("B1", "0", "a", 12.6, 0)
                .battery("B2", "0", "b", 12.5, 0)
                .diode("D1", "a", "c", 0.5, 0.1)
                .diode("D2", "b", "c", 0.5, 0.1)
                .heater("L", "c", "0", 1.2)
                .solve()
                .hasVolts("c", volts)
                .hasAmps("D1", (12.1 - volts) / 0.1)
                .hasAmps("D2", (12.0 - volts) / 0.1);
    }

    @Test
    void anAlternatorBelowItsLimitHoldsItsSetPointAndChargesTheBattery() {
        // 14.4 V set point; battery 12.6 V behind 50 mohm takes 1.8 V / 50 mohm = 36 A, the load 14.4 A
        new Net()
                .battery("B", "0", "a", 12.6, 0.05)
                .regulated("G", "0", "a", 14.4, 0, 100)
                .heater("L", "a", "0", 1)
                .solve()
                .hasVolts("a", 14.4)
                .hasAmps("B", -36)
                .hasAmps("G", 50.4);
    }

    @Test
    void anAlternatorAtItsLimitLeavesTheRestToTheBattery() {
        // 30 A limit, load 40 A: the battery gives 10 A at 12.6 - 10 x 0.05 = 12.1 V
        new Net()
                .battery("B", "0", "a", 12.6, 0.05)
                .regulated("G", "0", "a", 14.4, 0.01, 30)
                .current("L", "a", "0", 40)
                .solve()
                .hasAmps("G", 30)
                .hasAmps("B", 10)
                .hasVolts("a", 12.1);
    }

    @Test
    void aRegulatedSourceTakesNoCurrentBack() {
        // set to 12 V beside 13.8 V: idle
        new Net()
                .battery("B", "0", "a", 13.8, 0.01)
                .regulated("G", "0", "a", 12, 0.01, 30)
                .heater("L", "a", "0", 1.37)
                .solve()
                .hasAmps("G", 0)
                .hasAmps("B", 10);
    }

    @Test
    void aSourceAtItsLimitAloneLetsTheVoltageSink() {
        // 5 A limit into 2 ohm: 10 V instead of 14 V
        new Net()
                .regulated("G", "0", "a", 14, 0, 5)
                .heater("L", "a", "0", 2)
                .solve()
                .hasAmps("G", 5)
                .hasVolts("a", 10);
    }

    @Test
    void twoIdealSupplyWithLimitsShareByTheirSetPoints() {
        // 14.2 V gives its 10 A, 14.0 V the other 5 A and holds the voltage
        new Net()
                .regulated("G1", "0", "a", 14.2, 0, 10)
                .regulated("G2", "0", "a", 14.0, 0, 10)
                .current("L", "a", "0", 15)
                .solve()
                .hasAmps("G1", 10)
                .hasAmps("G2", 5)
                .hasVolts("a", 14);
    }

    @Test
    void idealSourcesInParallelHaveNoUniqueAnswer() {
        for (double second : new double[] {12, 13}) {
            Solved solved = new Net()
                    .battery("B1", "0", "a", 12, 0)
                    .battery("B2", "0", "a", second, 0)
                    .heater("L", "a", "0", 6)
                    .solve();
            assertEquals(IslandStatus.SINGULAR, solved.status("a"));
            assertTrue(
                    solved.island("a").sentence().contains("B2 and B1"),
                    solved.island("a").sentence());
            assertEquals(0, solved.amps("L"));
        }
    }

    @Test
    void aPointBehindABlockingDiodeHasAVoltageAndNoCurrent() {
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0.01)
                .heater("L", "a", "0", 1.19)
                .diode("D", "x", "a", 0.7, 0.01)
                .wire("W", "x", "y", 0.05)
                .solve();
        solved.hasAmps("D", 0).hasAmps("W", 0).hasAmps("L", 10);
        assertEquals(solved.volts("x"), solved.volts("y"), 1e-12);
        assertTrue(solved.drop("D") <= 0.7, "a diode that blocks");
    }

    @Test
    void aFixedPresentCurrentFlowsAtAnyVoltageAndSleepsWhenNothingCanBringIt() {
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0.1)
                .branch("P", BranchKind.PRESENT_LOAD, "a", "0", new Law.FixedCurrent(4))
                .open("S", "a", "b")
                .branch("Q", BranchKind.PRESENT_LOAD, "b", "0", new Law.FixedCurrent(4))
                .solve();
        solved.hasAmps("P", 4).hasAmps("Q", 0).hasVolts("a", 11.6);
    }

    @Test
    void aFixedCurrentIntoABlockingDiodeIsSingular() {
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0.1)
                .diode("D", "b", "a", 0.7, 0.01)
                .branch("Q", BranchKind.PRESENT_LOAD, "b", "0", new Law.FixedCurrent(4))
                .solve();
        assertEquals(IslandStatus.SINGULAR, solved.status("a"));
        assertTrue(solved.island("a").sentence().startsWith("Q is to carry 4 A"));
    }
}
