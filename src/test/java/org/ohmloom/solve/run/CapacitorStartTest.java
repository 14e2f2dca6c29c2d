package org.ohmloom.solve.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;

/** Input capacitors of control units fill through the feed, against the closed form of R and C. */
@BesideOthers
class CapacitorStartTest {

    private static final double SERIES = StartUp.SERIES_ERROR_SHARE;

    private static ControlUnit unit(double farads, OptionalDouble ohms) {
        return new ControlUnit(
                List.of(Pin.of("30", PinRole.SUPPLY), Pin.of("31", PinRole.GROUND)),
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(farads),
                ohms);
    }

    private static HarnessSketch fed(ControlUnit unit, double feedOhms) {
        return new HarnessSketch()
                .battery("BT1", 12, 1e-9)
                .fuse("F1", 5, feedOhms)
                .component("U1", unit)
                .wire("W1", "BT1.+", "F1.1", 1e-9)
                .wire("W2", "F1.2", "U1.30", 1e-9)
                .wire("W3", "U1.31", "BT1.-", 1e-9);
    }

    @Test
    void aCapacitorFillsWithTheFeedInSeries() {
        // 2 mF behind 0.1 ohm of its own and 0.3 ohm of feed: 12 / 0.4 = 30 A, tau = 0.4 ohm x 2 mF = 0.8 ms
        StartUp run = Started.of(fed(unit(2e-3, OptionalDouble.of(0.1)), 0.3)).run("U1");
        StarterTrace trace = run.starters().get(0);
        assertEquals(Manner.CHARGES, trace.manner());
        assertEquals(30, trace.peakAmps(), 1e-5);
        assertEquals(0.8e-3, trace.timeConstantSeconds(), 1e-9);
        for (double seconds : Started.instants(run, 100)) {
            double expected = 30 * Math.exp(-seconds / 0.8e-3);
            assertEquals(expected, Started.at(run, trace.amps(), seconds), 30 * SERIES, "at " + seconds + " s");
        }
        // at first the unit gets 30 A x 0.1 ohm = 3 V
        assertEquals(3, trace.lowestVolts(), 1e-6);
    }

    @Test
    void theSquareIntegralOfFillingIsHalfTheChargeTimesTheFirstCurrent() {
        // exponential pulse 0.5 Ip^2 tau (fuse maker selection guide, chart 1): 0.5 x 30^2 x 0.8 ms = 0.36 A2s
        StartUp run = Started.of(fed(unit(2e-3, OptionalDouble.of(0.1)), 0.3)).run("U1");
        assertEquals(0.36, run.surge(new ComponentId("F1")).orElseThrow().squareAmpSeconds(), 0.36 * 2e-3);
    }

    @Test
    void aCapacitorWithoutItsResistanceTakesTheUsualOneAndSaysSo() {
        // 50 mohm: 12 V / 0.35 ohm = 34.3 A
        Started started = Started.of(fed(unit(2e-3, OptionalDouble.empty()), 0.3));
        assertEquals(12 / 0.35, started.run("U1").starters().get(0).peakAmps(), 1e-4);
        assertTrue(started.all().assumptions().get(0).text().contains("50 m"));
    }
}
