package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/** Loads that share one open switch and go back to returns that another load lifts apart. */
@BesideOthers
class UnfedPairTest {
    private static final double EXACT = 1e-9;

    @Test
    void loadsBehindOneOpenSwitchDrawNothingWhateverTheirReturns() {
        for (double milliohms = 1; milliohms < 60; milliohms *= 1.3) {
            // 17 A lift the far return by 17 A x milliohms; L2 and L3 hang between both returns, unfed
            Solved solved = new Net()
                    .battery("B", "n", "p", 12.6, 0.01)
                    .current("L1", "p", "far", 17)
                    .wire("R1", "far", "near", milliohms / 1000)
                    .wire("R2", "near", "n", 0.02)
                    .open("S", "p", "t")
                    .wire("W2", "t", "a", 0.0125)
                    .wire("W3", "t", "b", 0.0081)
                    .current("L2", "a", "far2", 11)
                    .current("L3", "b", "near3", 4)
                    .wire("U2", "far2", "far", 0.0217)
                    .wire("U3", "near3", "near", 0.0163)
                    .solve();
            assertEquals(17, solved.amps("L1"), EXACT);
            assertEquals(0, solved.amps("L2"), EXACT);
            assertEquals(0, solved.amps("L3"), EXACT);
        }
    }
}
