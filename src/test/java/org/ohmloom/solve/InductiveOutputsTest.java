package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Pulse;

/** Inductive loads behind outputs that switch, each worked by hand or taken from a textbook. */
@BesideOthers
class InductiveOutputsTest {

    /** The conductors of the hand checks have next to no resistance; what they have shows in the seventh digit. */
    private static final double NEARLY = 1e-5;

    private static final double NO_OHMS = 1e-7;

    static Law inductive(double ohms, double henries) {
        return new Law.Inductive(ohms, henries);
    }

    /** A battery, a high-side output and a load with a diode of 0 V across it. */
    private static Net chopper(double volts, double ohms, double henries, double hertz, double duty) {
        return new Net()
                .battery("B", "0", "s", volts, 0)
                .wire("FEED", "s", "a", NO_OHMS)
                .output("Q", "a", "b", NO_OHMS, new Pulse("Q", hertz, 0, duty))
                .wire("OUT", "b", "l", NO_OHMS)
                .branch("L", BranchKind.LOAD, "l", "0", inductive(ohms, henries))
                .branch("L.fw", BranchKind.FREEWHEEL_DIODE, "0", "l", new Law.Threshold(0, NO_OHMS));
    }

    @Test
    void aTenAmpereCoilAtAQuarterKeepsAQuarterOfItsCurrent() {
        // 12 V / 1.2 ohm = 10 A; at D 0.25 without ripple 2.5 A through load and freewheel loop; the feed carries it a
        // quarter
        // of the time: 2.5 A on, 2.5 sqrt(0.25) = 1.25 A RMS, 0.625 A mean
        Solved solved = chopper(12, 1.2, 1000, 1000, 0.25).solve();
        BranchFlow load = solved.flow("L");
        assertEquals(2.5, load.amps(), NEARLY);
        assertEquals(2.5, load.rmsAmps(), NEARLY);
        BranchFlow feed = solved.flow("FEED");
        assertEquals(2.5, feed.onAmps(), NEARLY);
        assertEquals(1.25, feed.rmsAmps(), NEARLY);
        assertEquals(0.625, feed.amps(), NEARLY);
        // the diode carries the rest: 0.75 x 2.5 A, LF-7 of the textbooks: (1 - D) I
        assertEquals(1.875, solved.flow("L.fw").amps(), NEARLY);
        assertEquals(2.5 * Math.sqrt(0.75), solved.flow("L.fw").rmsAmps(), NEARLY);
    }

    @Test
    void theRippleOfAChoppedCoilIsThatOfTheTextbook() {
        // Rashid, Power Electronics, 4th edition, example 5.2: 220 V, 5 ohm, 7.5 mH, 1 kHz, D 0.5: 18.37 A to 25.63 A,
        // mean
        // 22 A, RMS 22.1 A (18.367, 25.633, 22.0998 when recomputed)
        Solved solved = chopper(220, 5, 7.5e-3, 1000, 0.5).solve();
        Ripple ripple = solved.solution().duty().ripples().get(new BranchId("L"));
        assertEquals(18.367, ripple.valleyAmps(), 1e-3);
        assertEquals(25.633, ripple.peakAmps(), 1e-3);
        assertEquals(7.266, ripple.rippleAmps(), 1e-3);
        assertEquals(22, solved.flow("L").amps(), 1e-4);
        assertEquals(22.0998, solved.flow("L").rmsAmps(), 1e-3);
        assertTrue(ripple.isContinuous());
        assertTrue(ripple.hasFreewheel());
    }

    @Test
    void theFeedOfAFreewheeledPumpIsThatOfTheTextbook() {
        // 8 A at D 0.5: supply mean 4 A, RMS 8 sqrt(0.5) = 5.66 A; Rashid, Power Electronics, 4th edition, chapter 5
        // 12 V x 0.5 / 0.75 ohm = 8 A
        Solved solved = chopper(12, 0.75, 50, 1000, 0.5).solve();
        assertEquals(4, solved.flow("FEED").amps(), NEARLY);
        assertEquals(5.657, solved.flow("FEED").rmsAmps(), 1e-3);
    }

    @Test
    void aCurrentThatDiesBetweenPulsesIsDiscontinuous() {
        // 12 V, 1 ohm, 1 mH (tau 1 ms), 20 Hz (50 ms), D 0.1: 5 ms on: I2 = 12 (1 - e^-5) = 11.919 A, then nothing
        // within
        // 45 ms but e^-45 of it. Mean 12 x 0.1 = 1.2 A: the volt-seconds of the off time are 0
        Solved solved = chopper(12, 1, 1e-3, 20, 0.1).solve();
        Ripple ripple = solved.solution().duty().ripples().get(new BranchId("L"));
        assertEquals(11.919, ripple.peakAmps(), 1e-3);
        assertEquals(1.2, solved.flow("L").amps(), NEARLY);
        // mean square of the load: on 12^2 (T - 2 tau (1 - e^-5) + tau/2 (1 - e^-10)), off I2^2 tau / 2; over 50 ms
        double on = 144 * (5 - 2 * (1 - Math.exp(-5)) + 0.5 * (1 - Math.exp(-10)));
        double off = Math.pow(12 * (1 - Math.exp(-5)), 2) * 0.5;
        assertEquals(Math.sqrt((on + off) / 50), solved.flow("L").rmsAmps(), 1e-4);
    }

    @Test
    void withoutAFreewheelPathTheCurrentBreaksOff() {
        // 12 V, 1 ohm, 10 mH, 100 Hz, D 0.5: from 0 in 5 ms (half tau) to 12 (1 - e^-0.5) = 4.7216 A, and gone
        Net net = new Net()
                .battery("B", "0", "s", 12, 0)
                .output("Q", "s", "l", NO_OHMS, new Pulse("Q", 100, 0, 0.5))
                .branch("L", BranchKind.LOAD, "l", "0", inductive(1, 10e-3));
        Solved solved = net.solve();
        Ripple ripple = solved.solution().duty().ripples().get(new BranchId("L"));
        assertFalse(ripple.hasFreewheel());
        assertEquals(4.7216, ripple.peakAmps(), 1e-3);
        // what the coil held goes into what breaks: L I^2 / 2
        assertEquals(0.5 * 10e-3 * 4.7216 * 4.7216, ripple.brokenJoules(), 1e-4);
        // mean of the on time: 12 (1 - 2 (1 - e^-0.5)) = 2.5567 A for half the period
        assertEquals(2.5567 / 2, solved.flow("B").amps(), 1e-3);
        assertEquals(IslandStatus.SOLVED, solved.status("s"));
    }

    @Test
    void anActiveClampSwallowsTheCoilsEnergyAndTheSuppliesShare() {
        // low side: the clamp holds the output at 36 V; supply 12 V, so the coil sees -24 V. R small: from I = 12 V x 5
        // ms / 10 mH =
        // 6 A it dies in 6 A x 10 mH / 24 V = 2.5 ms; energy 36 V x 6 A x 2.5 ms / 2 = 0.27 J = L I^2 / 2 x 36 / 24
        Net net = new Net()
                .battery("B", "0", "s", 12, 0)
                .branch("L", BranchKind.LOAD, "s", "d", inductive(1e-4, 10e-3))
                .output("Q", "d", "0", NO_OHMS, new Pulse("Q", 100, 0, 0.5))
                .branch("Q.clamp", BranchKind.CLAMP, "d", "0", new Law.Threshold(36, NO_OHMS));
        Solved solved = net.solve();
        ClampPulse pulse = solved.solution().duty().clamps().get(new BranchId("Q.clamp"));
        assertEquals(0.27, pulse.pulseJoules(), 1e-4);
        assertEquals(27, pulse.meanWatts(), 1e-2);
        assertEquals(
                6, solved.solution().duty().ripples().get(new BranchId("L")).peakAmps(), 1e-3);
    }

    @Test
    void aLongThinFeedDoesNotUpsetTheSearch() {
        // feed resistance twice that of the coil: plain repetition would run away. Ripple-free, D 0.5: the feed carries
        // I while
        // on and nothing else; 0.5 (12 - 2 I) = 1 I: I = 3 A
        Net net = new Net()
                .battery("B", "0", "s", 12, 0)
                .wire("FEED", "s", "a", 2)
                .output("Q", "a", "l", NO_OHMS, new Pulse("Q", 1000, 0, 0.5))
                .branch("L", BranchKind.LOAD, "l", "0", inductive(1, 100))
                .branch("L.fw", BranchKind.FREEWHEEL_DIODE, "0", "l", new Law.Threshold(0, NO_OHMS));
        Solved solved = net.solve();
        assertEquals(3, solved.flow("L").amps(), NEARLY);
        assertEquals(3 * Math.sqrt(0.5), solved.flow("FEED").rmsAmps(), NEARLY);
    }
}
