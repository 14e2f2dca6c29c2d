package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/** Outputs that switch at a duty on one clock, all of them on from the start of the period. */
@BesideOthers
class DutyCyclesTest {

    @Test
    void twoOutputsOnAnIdealSupplyHaveTheirOwnMeansAndShareTheFeed() {
        // 12 V; Q1 at 0.3 into 4 ohm: 3 A; Q2 at 0.6 into 6 ohm: 2 A
        // feed: 5 A for 0.3, 2 A for 0.3, 0 A for 0.4; mean 2.1 A, RMS sqrt(0.3 x 25 + 0.3 x 4) = sqrt(8.7)
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .output("Q1", "a", "b", 1e-6, 0.3)
                .output("Q2", "a", "c", 1e-6, 0.6)
                .heater("L1", "b", "0", 3.999999)
                .heater("L2", "c", "0", 5.999999)
                .solve();
        solved.hasAmps("L1", 0.9).hasAmps("L2", 1.2).hasAmps("B", 2.1);
        Solved.near(Math.sqrt(8.7), solved.flow("B").rmsAmps(), "RMS of the feed");
        Solved.near(5, solved.flow("B").onAmps(), "on-state of the feed");
        Solved.near(3 * Math.sqrt(0.3), solved.flow("L1").rmsAmps(), "RMS of an output");
        Solved.near(3, solved.flow("Q1").onAmps(), "on-state of an output");
        assertTrue(solved.flow("Q1").ohms().isEmpty(), "a switching device");
    }

    @Test
    void twoOutputsOnAFeedWithResistanceDisturbEachOther() {
        // 12 V behind 1 ohm; Q1 0.3 into 2 ohm, Q2 0.6 into 2 ohm (0.5 + 1.5)
        // both on: 1 + 1 = 2 ohm, 6 A, 3 A each; one on: 1 + 2 = 3 ohm, 4 A; none: 0
        Solved solved = new Net()
                .battery("B", "0", "t", 12, 0)
                .wire("W", "t", "a", 1)
                .output("Q1", "a", "b", 0.5, 0.3)
                .output("Q2", "a", "c", 0.5, 0.6)
                .heater("L1", "b", "0", 1.5)
                .heater("L2", "c", "0", 1.5)
                .solve();
        // means: feed 0.3 x 6 + 0.3 x 4 = 3 A; L1 0.3 x 3 = 0.9; L2 0.3 x 3 + 0.3 x 4 = 2.1
        solved.hasAmps("W", 3).hasAmps("L1", 0.9).hasAmps("L2", 2.1);
        Solved.near(3, solved.drop("W"), "mean drop");
        Solved.near(6, solved.flow("W").onDropVolts(), "on-state drop");
        // RMS^2 = 0.3 x 36 + 0.3 x 16 = 15.6; watts in 1 ohm the same
        Solved.near(Math.sqrt(15.6), solved.flow("W").rmsAmps(), "RMS of the feed");
        Solved.near(15.6, solved.flow("W").watts(), "heat of the feed");
        // mean voltage at a: 12 - 3
        solved.hasVolts("a", 9);
    }

    @Test
    void ofAllOutputsOnAtOneDutyThePeriodHasTwoParts() {
        // current is 2 A for a quarter of the time
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .output("Q", "a", "b", 1, 0.25)
                .heater("L", "b", "0", 5)
                .solve();
        solved.hasAmps("L", 0.5);
        Solved.near(1, solved.flow("L").rmsAmps(), "2 A x sqrt(0.25)");
        Solved.near(2, solved.flow("L").onAmps(), "on-state");
        Solved.near(20 * 0.25, solved.flow("L").watts(), "mean power");
        Solved.near(12 - 0.5 * 5, solved.drop("Q"), "mean voltage over the output");
    }

    @Test
    void meansOfNonlinearLoadsStillBalance() {
        Solved solved = new Net()
                .battery("B", "0", "t", 12, 0.05)
                .wire("W", "t", "a", 0.05)
                .output("Q1", "a", "b", 0.02, 0.35)
                .output("Q2", "a", "c", 0.02, 0.8)
                .lamp("L1", "b", "0", 5, 12)
                .power("L2", "c", "0", 40)
                .current("L3", "a", "0", 2)
                .solve();
        Solved.near(solved.amps("L1") + solved.amps("L2") + 2, solved.amps("B"), "sum of the means");
        Solved.near(40 * 0.8, solved.flow("L2").watts(), "40 W for 0.8 of the time");
        assertEquals(2, solved.flow("L3").rmsAmps(), 1e-12);
    }

    @Test
    void meanIsAtMostRmsAndRmsAtMostTheOnState() {
        Solved solved = new Net()
                .battery("B", "0", "t", 12, 0.05)
                .output("Q1", "t", "b", 0.02, 0.1)
                .output("Q2", "t", "c", 0.02, 0.9)
                .heater("L1", "b", "0", 1)
                .heater("L2", "c", "0", 2)
                .solve();
        for (BranchFlow flow : solved.solution().flows().values()) {
            assertTrue(Math.abs(flow.amps()) <= flow.rmsAmps() + 1e-12, flow.toString());
        }
        assertTrue(solved.flow("L1").rmsAmps() <= solved.flow("L1").onAmps() + 1e-12);
    }

    @Test
    void aPointBetweenTwoOutputsThatAreOffHasAVoltage() {
        // high side and low side switched together: in between everything floats while off
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .output("Q1", "a", "b", 1, 0.5)
                .heater("L", "b", "c", 4)
                .output("Q2", "c", "0", 1, 0.5)
                .solve();
        // 2 A for half the time
        solved.hasAmps("L", 1);
        assertTrue(solved.volts("b") > 0 && solved.volts("b") < 12);
    }
}
