package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/** Size and stopping. */
@BesideOthers
class LargeNetworksTest {

    @Test
    void aChainOfTwentyThousandPoints() {
        // 20,000 x 1 mohm = 20 ohm and a load of 4 ohm on 24 V: 1 A; the point k links from the source stands at 24 -
        // k/1000
        Net net = new Net().battery("B", "0", "p0", 24, 0);
        for (int link = 1; link <= 20_000; link++) {
            net.wire("W" + link, "p" + (link - 1), "p" + link, 0.001);
        }
        net.heater("L", "p20000", "0", 4)
                .solve()
                .hasAmps("L", 1)
                .hasVolts("p10000", 14)
                .hasVolts("p20000", 4);
    }

    @Test
    void aTreeOfFiveThousandWiresWithALoadOfEveryKindAtItsLeaves() {
        Random random = new Random(5);
        Net net = new Net().battery("B", "0", "p0", 24, 0.001);
        double amps = 0;
        for (int wire = 1; wire <= 5_000; wire++) {
            net.wire("W" + wire, "p" + random.nextInt(wire), "p" + wire, 1e-6);
            if (wire % 2 == 0) {
                net.current("L" + wire, "p" + wire, "0", 0.01);
                amps += 0.01;
            } else if (wire % 5 == 0) {
                net.power("L" + wire, "p" + wire, "0", 0.5);
            } else if (wire % 7 == 0) {
                net.lamp("L" + wire, "p" + wire, "0", 0.1, 24);
            }
        }
        Solved solved = net.solve();
        assertEquals(IslandStatus.SOLVED, solved.status("0"));
        assertTrue(solved.amps("B") > amps + 500 * 0.5 / 24, "all loads together");
    }

    @Test
    void aBusBarWithThousandsOfWires() {
        // 4,000 x 24 V / (1 + 23 ohm) = 4,000 A
        Net net = new Net().battery("B", "0", "bar", 24, 0);
        for (int wire = 1; wire <= 4_000; wire++) {
            net.wire("W" + wire, "bar", "p" + wire, 1);
            net.heater("L" + wire, "p" + wire, "0", 23);
        }
        net.solve().hasAmps("B", 4_000).hasAmps("L4000", 1);
    }

    @Test
    void ohmsFromAMillionthToAMillionInOneNetwork() {
        // 1 Mohm sensor behind 1 uohm links: 12 V / (1e6 + 3e-6); beside it 100 A through the first link
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .wire("W1", "a", "b", 1e-6)
                .wire("W2", "b", "c", 1e-6)
                .wire("W3", "c", "d", 1e-6)
                .heater("N", "d", "0", 1e6)
                .current("L", "b", "0", 100)
                .solve();
        double sensor = (12 - 1e-4) / (1e6 + 2e-6);
        assertEquals(sensor, solved.amps("N"), 1e-9 * sensor);
        // the difference of two points at 12 V is 1.2e-11 V, and its current still has nine digits
        assertEquals(sensor, solved.amps("W3"), 1e-9 * sensor);
        assertEquals(100 + sensor, solved.amps("W1"), 1e-9);
    }

    @Test
    void aSolutionNobodyWaitsForStops() {
        AtomicInteger asked = new AtomicInteger();
        Net net = new Net().battery("B", "0", "p0", 24, 0.001);
        for (int wire = 1; wire <= 3_000; wire++) {
            net.wire("W" + wire, "p" + (wire - 1), "p" + wire, 1e-4);
            net.lamp("L" + wire, "p" + wire, "0", 0.01, 24);
        }
        assertThrows(
                CancellationException.class,
                () -> NetworkSolver.solve(net.network(), () -> asked.incrementAndGet() > 5));
        assertEquals(6, asked.get(), "it stopped at once");
    }
}
