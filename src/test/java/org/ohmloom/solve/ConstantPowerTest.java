package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.BranchId;

/** Loads of constant power: the stable operating point, and the limit Vs^2 / (4 R) beyond which there is none. */
@BesideOthers
class ConstantPowerTest {

    @Test
    void ofTheTwoOperatingPointsTheUpperOneIsFound() {
        // 12 V, 0.1 ohm, 110 W: V = (12 + sqrt(144 - 44)) / 2 = 11 V, 10 A
        new Net()
                .battery("B", "0", "a", 12, 0.1)
                .power("L", "a", "0", 110)
                .solve()
                .hasVolts("a", 11)
                .hasAmps("L", 10);
    }

    @Test
    void justBelowTheLimitThereIsAnAnswerAndJustAboveThereIsNone() {
        // 12 V, 0.5 ohm: limit 144 / 2 = 72 W
        for (double share : new double[] {0.9, 0.999, 0.99999}) {
            double watts = 72 * share;
            double volts = (12 + Math.sqrt(144 - 2 * watts)) / 2;
            Solved solved = new Net()
                    .battery("B", "0", "a", 12, 0.5)
                    .power("L", "a", "0", watts)
                    .solve();
            assertEquals(volts, solved.volts("a"), 1e-9);
        }
        for (double share : new double[] {1.0001, 1.001, 1.1, 100}) {
            Solved solved = new Net()
                    .battery("B", "0", "a", 12, 0.5)
                    .power("L", "a", "0", 72 * share)
                    .solve();
            assertEquals(IslandStatus.OVERLOADED, solved.status("a"));
            assertEquals(new BranchId("L"), solved.island("a").cause().orElseThrow());
            assertTrue(
                    solved.island("a").sentence().contains("72 W of it"),
                    solved.island("a").sentence());
            assertEquals(0, solved.amps("L"));
        }
    }

    @Test
    void ofLoadsOnOneFeedTheLargestIsNamed() {
        // 1 ohm feed, 12 V: together at most 36 W
        Net net = new Net().battery("B", "0", "a", 12, 1);
        Solved below = net.power("L1", "a", "0", 5)
                .power("L2", "a", "0", 25)
                .power("L3", "a", "0", 5.9)
                .solve();
        assertEquals(IslandStatus.SOLVED, below.status("a"));
        Solved above = net.power("L3", "a", "0", 6.1).solve();
        assertEquals(IslandStatus.OVERLOADED, above.status("a"));
        assertEquals(new BranchId("L2"), above.island("a").cause().orElseThrow());
    }

    @Test
    void ofLoadsOnSeparateFeedsTheOneWithTheThinFeedIsNamed() {
        // L1: 100 W over 0.1 ohm (limit 360 W); L2: 50 W over 1 ohm (limit 36 W)
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .wire("W1", "a", "b", 0.1)
                .wire("W2", "a", "c", 1)
                .power("L1", "b", "0", 100)
                .power("L2", "c", "0", 50)
                .solve();
        assertEquals(IslandStatus.OVERLOADED, solved.status("a"));
        assertEquals(new BranchId("L2"), solved.island("a").cause().orElseThrow());
    }

    @Test
    void aLongChainOfLoadsIsSolvedUpToItsLimit() {
        // 200 points 2 mohm apart with a load each; the limit is found by solving at shares of it
        double solvedWatts = 0;
        double failedWatts = 10;
        for (int halving = 0; halving < 14; halving++) {
            double watts = (solvedWatts + failedWatts) / 2;
            if (chain(watts).status("0") == IslandStatus.SOLVED) {
                solvedWatts = watts;
            } else {
                failedWatts = watts;
            }
        }
        Solved below = chain(0.999 * solvedWatts);
        Solved above = chain(1.001 * failedWatts);
        assertEquals(IslandStatus.SOLVED, below.status("0"));
        assertEquals(IslandStatus.OVERLOADED, above.status("0"));
        assertTrue(below.volts("p200") > 24.0 / 3, "the end of the chain is on the upper side");
        String cause = above.island("0").cause().orElseThrow().value();
        assertTrue(Integer.parseInt(cause.substring(1)) > 150, "the cause lies at the far end, was " + cause);
        for (int load = 1; load <= 200; load++) {
            assertEquals(0.999 * solvedWatts, below.flow("L" + load).watts(), 1e-9);
        }
    }

    private static Solved chain(double wattsEach) {
        Net net = new Net().battery("B", "0", "p0", 24, 0.001);
        for (int point = 1; point <= 200; point++) {
            net.wire("W" + point, "p" + (point - 1), "p" + point, 0.002);
            net.power("L" + point, "p" + point, "0", wattsEach);
        }
        return net.solve();
    }

    @Test
    void aLoadThatIsNotFedSleeps() {
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0.1)
                .power("L1", "a", "0", 110)
                .open("S", "a", "b")
                .power("L2", "b", "0", 110)
                .solve();
        solved.hasAmps("L1", 10).hasAmps("L2", 0);
    }

    @Test
    void aSupplyAtItsCurrentLimitIsOverloadedBeyondItsPower() {
        // 12 V and 10 A: 120 W
        Net net = new Net().regulated("G", "0", "a", 12, 0, 10);
        net.power("L", "a", "0", 119).solve().hasVolts("a", 12);
        assertEquals(
                IslandStatus.OVERLOADED, net.power("L", "a", "0", 121).solve().status("a"));
    }

    @Test
    void powerLampsAndCurrentsTogetherKeepEachLaw() {
        Solved solved = new Net()
                .battery("B", "0", "a", 13.2, 0.02)
                .wire("W1", "a", "b", 0.03)
                .wire("W2", "r", "0", 0.04)
                .power("L1", "b", "r", 60)
                .lamp("L2", "b", "r", 5, 13.5)
                .current("L3", "b", "r", 3)
                .heater("L4", "b", "r", 4)
                .solve();
        double volts = solved.drop("L1");
        assertEquals(60, volts * solved.amps("L1"), 1e-12);
        assertEquals(5 * Math.pow(volts / 13.5, 0.55), solved.amps("L2"), 1e-12);
        assertEquals(volts / 4, solved.amps("L4"), 1e-12);
        double total = 60 / volts + 5 * Math.pow(volts / 13.5, 0.55) + 3 + volts / 4;
        assertEquals(13.2 - 0.09 * total, volts, 1e-11);
    }
}
