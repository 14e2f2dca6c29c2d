package org.ohmloom.solve.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;

/** Loads whose current falls exponentially from a peak, against closed forms. */
@BesideOthers
class PeakStartTest {

    /** What the series promises. */
    private static final double SERIES = StartUp.SERIES_ERROR_SHARE;

    /** Simpson's rule over steps that are straight to half a per cent. */
    private static final double INTEGRAL = 2e-4;

    /** Values at an instant that was solved; what stands for no resistance is 1 nohm. */
    private static final double SOLVED = 1e-7;

    /** 12 V without resistance over 0.1 mohm of fuse and wire to a load that takes 2 A. */
    private static HarnessSketch stiff(double peakAmps, double decaySeconds) {
        return new HarnessSketch()
                .battery("BT1", 12, 1e-9)
                .fuse("F1", 5, 1e-4)
                .component("L1", Started.peak(new Draw.ConstantCurrent(2, 12), peakAmps, decaySeconds))
                .wire("W1", "BT1.+", "F1.1", 1e-9)
                .wire("W2", "F1.2", "L1.+", 1e-9)
                .wire("W3", "L1.-", "BT1.-", 1e-9);
    }

    @Test
    void aPeakBehindAStiffSourceFallsExponentially() {
        // 12 V at 12 V rated: I = 2 + (20 - 2) exp(-t / 50 ms); 0.1 mohm in the way costs 2 mV of 12 V
        StartUp run = Started.of(stiff(20, 0.05), "L1").run("L1");
        StarterTrace trace = run.starters().get(0);
        assertEquals(20, trace.peakAmps(), 20 * 2e-4);
        for (double seconds : Started.instants(run, 200)) {
            double expected = 2 + 18 * Math.exp(-seconds / 0.05);
            assertEquals(expected, Started.at(run, trace.amps(), seconds), 20 * SERIES, "at " + seconds + " s");
        }
        // what is left is under 1 %: ln(100) = 4.6 time constants
        assertTrue(run.durationSeconds() > 4.6 * 0.05 && run.durationSeconds() < 8 * 0.05, "ends when settled");
        // within 5 % of the way: ln(20) = 3.0 time constants, to the next solved instant
        assertTrue(trace.settleSeconds() >= 2.9 * 0.05 && trace.settleSeconds() < 4 * 0.05, "settles");
        assertEquals(StartUp.Outcome.SETTLED, run.outcome());
    }

    @Test
    void theSeriesOfAPeakIsThin() {
        StartUp run = Started.of(stiff(20, 0.05), "L1").run("L1");
        assertTrue(run.seconds().size() <= 15, run.seconds().size() + " instants");
        assertTrue(run.solutions() <= 60, run.solutions() + " solutions");
    }

    @Test
    void theSquareIntegralOfAPulseIsThatOfTheFuseMakersChart() {
        // exponential pulse: I2t = 0.5 x Ip^2 x tau (fuse maker selection guide, chart 1): 0.5 x 100^2 x 0.02 s = 100
        // A2s.
        // The load is taken as 1 mA when it runs; cut off at 1 % of the peak, which leaves out 1e-4 of it.
        HarnessSketch sketch = new HarnessSketch()
                .battery("BT1", 12, 1e-9)
                .fuse("F1", 5, 1e-6)
                .component("L1", Started.peak(new Draw.ConstantCurrent(0.001, 12), 100, 0.02))
                .wire("W1", "BT1.+", "F1.1", 1e-9)
                .wire("W2", "F1.2", "L1.+", 1e-9)
                .wire("W3", "L1.-", "BT1.-", 1e-9);
        DeviceSurge surge =
                Started.of(sketch, "L1").run("L1").surge(new ComponentId("F1")).orElseThrow();
        assertEquals(100, surge.squareAmpSeconds(), 100 * (INTEGRAL + 1e-4 + 2e-5));
        assertEquals(100, surge.peakAmps(), 1e-2);
    }

    @Test
    void whatTheStartAddsIsCountedWithoutTheRunningCurrent() {
        // i = 2 + 18 f, f = exp(-t/tau): integral of i^2 - 2^2 = 2 x 2 x 18 tau + 18^2 tau / 2 = (72 + 162) x 0.05 =
        // 11.7 A2s
        StartUp run = Started.of(stiff(20, 0.05), "L1").run("L1");
        DeviceSurge surge = run.surge(new ComponentId("F1")).orElseThrow();
        double end = surge.endAmps();
        // the run ends while 1 % is left, so its end current is a little above 2 A; both integrals are taken to there
        double seconds = run.durationSeconds();
        double left = Math.exp(-seconds / 0.05);
        double whole = 4 * seconds + 72 * 0.05 * (1 - left) + 162 * 0.05 * (1 - left * left);
        assertEquals(whole, surge.squareAmpSeconds(), whole * 5e-4);
        assertEquals(whole - end * end * seconds, surge.excessSquareAmpSeconds(), whole * 5e-4);
    }

    @Test
    void atTheFirstInstantAPeakIsAResistance() {
        // 20 A at 12 V is 0.6 ohm; behind 0.2 ohm 12 V drive 15 A and leave 9 V
        HarnessSketch sketch = new HarnessSketch()
                .battery("BT1", 12, 1e-9)
                .component("L1", Started.peak(new Draw.Resistive(2, 12), 20, 0.05))
                .wire("W1", "BT1.+", "L1.+", 0.1)
                .wire("W2", "L1.-", "BT1.-", 0.1)
                .load("L2", 1, 12)
                .wire("W3", "L1.+", "L2.+", 1e-9)
                .wire("W4", "L1.-", "L2.-", 1e-9);
        StartUp run = Started.of(sketch, "L1", "L2").run("L1");
        // the other load, 12 ohm beside it: 12 || 0.6 = 0.5714 ohm, 12 V x 0.5714 / 0.7714 = 8.8889 V
        SupplySag sag = run.sag(new ComponentId("L2")).orElseThrow();
        assertEquals(12 * (7.2 / 12.6) / (7.2 / 12.6 + 0.2), sag.lowestVolts(), SOLVED * 12);
        assertEquals(0, sag.lowestSeconds());
        // before: 12 V x 12 / 12.2
        assertEquals(12 * 12 / 12.2, sag.beforeVolts(), SOLVED * 12);
        assertEquals(8.8889 / 0.6, run.starters().get(0).peakAmps(), 1e-3);
    }

    @Test
    void aLampWithoutItsOwnInrushStartsWithTenTimesItsCurrentAndThatIsSaid() {
        // 60 W at 12 V: 5 A, ten times (relay module manual, switch maker's load guide): 50 A
        HarnessSketch sketch = new HarnessSketch()
                .battery("BT1", 12, 1e-9)
                .fuse("F1", 10, 1e-6)
                .component("L1", Started.load(new Draw.Lamp(60, 12)))
                .wire("W1", "BT1.+", "F1.1", 1e-9)
                .wire("W2", "F1.2", "L1.+", 1e-9)
                .wire("W3", "L1.-", "BT1.-", 1e-9);
        Started started = Started.of(sketch, "L1");
        assertEquals(50, started.run("L1").starters().get(0).peakAmps(), 0.01);
        assertTrue(started.all().assumptions().get(0).text().contains("10 times its current"));
        assertTrue(started.all().assumptions().get(0).source().contains("row filament lamp"));
    }
}
