package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;

/** Networks at the edge of what numbers hold: right, or without a single number and with a status that says why. */
@BesideOthers
class HardNetworksTest {

    private static final double NEAR = 1e-9;

    @Test
    void aRingOfMicrohmsBetweenMegohmsSharesItsMicroamperes() {
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .heater("R", "a", "b", 1e6)
                .wire("W1", "b", "c", 1e-6)
                .wire("W2", "c", "d", 1e-6)
                .wire("W3", "d", "b", 1e-6)
                .heater("L", "c", "0", 1e6)
                .solve();
        // 12 V over 2 Mohm; one way round the ring is half as long as the other
        assertEquals(6e-6, solved.amps("L"), NEAR * 6e-6);
        assertEquals(4e-6, solved.amps("W1"), NEAR * 4e-6);
        assertEquals(-2e-6, solved.amps("W2"), NEAR * 2e-6);
        assertEquals(-2e-6, solved.amps("W3"), NEAR * 2e-6);
    }

    @Test
    void aMeshOfMicrohmsAndMegohmsAtRandomKeepsEveryLaw() {
        Random random = new Random(20261130);
        for (int mesh = 0; mesh < Campaign.count(20, 500); mesh++) {
            Net net = new Net().battery("B", "n0", "n1", 12, 0.001);
            int points = 20 + random.nextInt(180);
            for (int point = 2; point < points; point++) {
                net.heater("W" + point, "n" + random.nextInt(point), "n" + point, random.nextBoolean() ? 1e-6 : 1e6);
                net.heater("V" + point, "n" + random.nextInt(point), "n" + point, random.nextBoolean() ? 1e-6 : 1e6);
            }
            // Solved holds Kirchhoff's laws of what is published
            assertEquals(IslandStatus.SOLVED, net.solve().status("n0"));
        }
    }

    @Test
    void twoWiresOfNextToNothingShareTheCurrent() {
        // 12 V / (0.01 + 2) ohm, half of it in each
        new Net()
                .battery("B", "0", "a", 12, 0.01)
                .wire("W1", "a", "b", 1e-12)
                .wire("W2", "a", "b", 1e-12)
                .heater("L", "b", "0", 2)
                .solve()
                .hasAmps("W1", 6 / 2.01)
                .hasAmps("W2", 6 / 2.01);
    }

    @Test
    void anIdealSourceShortedByNextToNothingHasNoNumbers() {
        Net shorted = new Net().battery("B", "0", "a", 12, 0).wire("W", "a", "0", 1e-12);
        withoutNumbers(shorted, IslandStatus.SINGULAR);
        assertEquals(
                "B has no internal resistance and is shorted by next to none: its current has no bound. "
                        + "Give it a resistance.",
                shorted.solve().island("0").sentence());
        Net opposed = new Net()
                .battery("B", "0", "a", 12, 0)
                .battery("C", "0", "b", 13, 0)
                .wire("W", "a", "b", 1e-12);
        withoutNumbers(opposed, IslandStatus.SINGULAR);
        // a thousandth of an ohm is a wire: 1 V over it is 1000 A
        Solved wired = new Net()
                .battery("B", "0", "a", 12, 0)
                .battery("C", "0", "b", 13, 0)
                .wire("W", "b", "a", 0.001)
                .solve();
        assertEquals(1000, wired.amps("W"), NEAR * 1000);
    }

    @Test
    void islandsByTheThousandWithoutASourceCarryNothingAndSaySo() {
        int islands = Campaign.count(2_000, 100_000);
        Net net = new Net().battery("B", "0", "a", 12, 0.5).heater("H", "a", "0", 1);
        for (int island = 0; island < islands; island++) {
            net.wire("W" + island, "x" + island, "y" + island, 0.001);
        }
        Solved solved = net.solve().hasAmps("H", 8);
        assertEquals(islands + 1, solved.solution().islands().size());
        assertEquals(IslandStatus.NO_SOURCE, solved.status("x" + (islands - 1)));
        assertEquals(0, solved.amps("W" + (islands - 1)));
        assertTrue(!solved.hasVolts("x" + (islands - 1)));
    }

    @Test
    void aChainOfAHundredThousandPointsWithLampsAllAlongIt() {
        int links = Campaign.count(10_000, 100_000);
        Net net = new Net().battery("B", "0", "p0", 24, 0);
        for (int link = 1; link <= links; link++) {
            net.wire("W" + link, "p" + (link - 1), "p" + link, 1e-6);
            if (link % 10 == 0) {
                net.lamp("L" + link, "p" + link, "0", 0.001, 24);
            }
        }
        Solved solved = net.heater("H", "p" + links, "0", 2).solve();
        assertEquals(IslandStatus.SOLVED, solved.status("0"));
        // at the end of the chain, whatever the lamps take on the way
        solved.hasAmps("H", solved.volts("p" + links) / 2);
    }

    @Test
    void numbersBeyondAllBoundsGiveAStatusAndNoNumbers() {
        Net volts = new Net().battery("B", "0", "a", 1e308, 0).wire("W", "a", "b", 1e-6);
        withoutNumbers(volts.heater("L", "b", "0", 1e-6), IslandStatus.NOT_CONVERGED);
        Net amps = new Net().battery("B", "0", "a", 12, 0).wire("W", "a", "b", 1e-6);
        withoutNumbers(amps.current("L", "b", "0", 1e308), IslandStatus.NOT_CONVERGED);
        Net watts = new Net().battery("B", "0", "a", 12, 0).wire("W", "a", "b", 1e-6);
        withoutNumbers(watts.power("L", "b", "0", 1e308), IslandStatus.OVERLOADED);
    }

    private static void withoutNumbers(Net net, IslandStatus status) {
        Solved solved = net.solve();
        assertEquals(status, solved.status("0"), solved.island("0").sentence());
        solved.solution().flows().values().forEach(flow -> assertEquals(0, flow.amps()));
        assertTrue(
                solved.solution().volts().isEmpty(), solved.solution().volts().toString());
    }
}
