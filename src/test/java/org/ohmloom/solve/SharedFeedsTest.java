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

/** Outputs of several clocks on one feed. */
@BesideOthers
class SharedFeedsTest {

    private static final double NO_OHMS = 1e-7;
    private static final double NEARLY = 1e-5;

    /** Two resistive loads of 10 A, each at D 0.25. */
    private static Solved two(Pulse first, Pulse second) {
        return new Net()
                .battery("B", "0", "s", 12, 0)
                .wire("FEED", "s", "a", NO_OHMS)
                .output("Q1", "a", "b", NO_OHMS, first)
                .output("Q2", "a", "c", NO_OHMS, second)
                .heater("L1", "b", "0", 1.2)
                .heater("L2", "c", "0", 1.2)
                .solve();
    }

    @Test
    void aResistiveLoadOfTenAmperesAtAQuarter() {
        // 10 A on, 10 sqrt(0.25) = 5 A RMS, 2.5 A mean; the same in load and output
        Solved solved = two(new Pulse("1", 100, 0, 0.25), new Pulse("2", 100, 0, 0.25));
        assertEquals(10, solved.flow("L1").onAmps(), NEARLY);
        assertEquals(5, solved.flow("L1").rmsAmps(), NEARLY);
        assertEquals(2.5, solved.flow("L1").amps(), NEARLY);
        assertEquals(5, solved.flow("Q1").rmsAmps(), NEARLY);
    }

    @Test
    void onSeparateClocksVariancesAdd() {
        // (2.5 + 2.5)^2 + 2 x 10^2 x 0.25 x 0.75 = 25 + 37.5 = 62.5; sqrt 7.906 A; all on at once 20 A
        Solved solved = two(new Pulse("1", 100, 0, 0.25), new Pulse("2", 130, 0, 0.25));
        assertEquals(Math.sqrt(62.5), solved.flow("FEED").rmsAmps(), NEARLY);
        assertEquals(20, solved.flow("FEED").onAmps(), NEARLY);
        assertEquals(4, solved.solution().duty().moments());
    }

    @Test
    void onOneClockInPhaseCurrentsAdd() {
        // 20 A for a quarter of the time: 20 sqrt(0.25) = 10 A
        Solved solved = two(new Pulse("1", 100, 0.3, 0.25), new Pulse("1", 100, 0.3, 0.25));
        assertEquals(10, solved.flow("FEED").rmsAmps(), NEARLY);
        assertEquals(2, solved.solution().duty().moments());
    }

    @Test
    void onOneClockOneAfterTheOtherTheFeedNeverCarriesBoth() {
        // 10 A for half the time: 10 sqrt(0.5) = 7.07 A, never more than 10 A; the second wraps round the end of the
        // period
        Solved solved = two(new Pulse("1", 100, 0.4, 0.25), new Pulse("1", 100, 0.9, 0.25));
        assertEquals(10 * Math.sqrt(0.5), solved.flow("FEED").rmsAmps(), NEARLY);
        assertEquals(10, solved.flow("FEED").onAmps(), NEARLY);
    }

    @Test
    void theMeanSquareOfAStretchIsWhatHeatsWhileItLasts() {
        Solved solved = two(new Pulse("1", 0.1, 0, 0.25), new Pulse("2", 130, 0, 0.25));
        DutyResults duty = solved.solution().duty();
        Clock slow = duty.clock("1").orElseThrow();
        // while the slow one is on the feed carries 10 A and, for a quarter of the time, 20 A: 100 x 0.75 + 400 x 0.25
        // = 175;
        // while it is off 100 x 0.25 = 25
        assertEquals(175, duty.meanSquareAmps(new BranchId("FEED"), slow, 0), 1e-3);
        assertEquals(25, duty.meanSquareAmps(new BranchId("FEED"), slow, 1), 1e-3);
        assertEquals(0.25, slow.stretches().get(0).shareFraction(), 1e-12);
        assertEquals(10, slow.periodSeconds(), 1e-12);
    }

    @Test
    void beyondTwelveOutputsASampleStandsForAllMomentsAndSaysHowWell() {
        // fourteen loads of 1 A at D 0.5 on clocks of their own: (14 x 0.5)^2 + 14 x 0.25 = 52.5, sqrt 7.246 A; all on
        // 14 A
        Net net = new Net().battery("B", "0", "s", 12, 0).wire("FEED", "s", "a", NO_OHMS);
        for (int load = 0; load < 14; load++) {
            net.output("Q" + load, "a", "b" + load, NO_OHMS, new Pulse("Q" + load, 100 + load, 0, 0.5))
                    .heater("L" + load, "b" + load, "0", 12);
        }
        Solved solved = net.solve();
        DutyResults duty = solved.solution().duty();
        assertTrue(duty.sampled());
        assertTrue(
                duty.samplingErrorRatio() > 0 && duty.samplingErrorRatio() < 0.02,
                "error " + duty.samplingErrorRatio());
        assertEquals(Math.sqrt(52.5), solved.flow("FEED").rmsAmps(), 4 * duty.samplingErrorRatio() * 7.3);
        assertEquals(14, solved.flow("FEED").onAmps(), NEARLY);
    }

    @Test
    void twelveOutputsAreTakenInFull() {
        Net net = new Net().battery("B", "0", "s", 12, 0).wire("FEED", "s", "a", NO_OHMS);
        for (int load = 0; load < 12; load++) {
            net.output("Q" + load, "a", "b" + load, NO_OHMS, new Pulse("Q" + load, 100 + load, 0, 0.5))
                    .heater("L" + load, "b" + load, "0", 12);
        }
        Solved solved = net.solve();
        assertFalse(solved.solution().duty().sampled());
        assertEquals(4096, solved.solution().duty().moments());
        // (12 x 0.5)^2 + 12 x 0.25 = 39
        assertEquals(Math.sqrt(39), solved.flow("FEED").rmsAmps(), NEARLY);
    }

    @Test
    void aCapacitorOnTheDriversSupplyCarriesTheRipple() {
        // Rashid, Power Electronics, 4th edition, chapter 5, and LF-6: 8 A at D 0.5: the capacitor carries 8 sqrt(0.5 x
        // 0.5) = 4 A
        // RMS, the feed 4 A without ripple. 12 V behind 0.1 ohm: 11.6 V at the driver; coil (11.6 x 0.5) / 8 A = 0.725
        // ohm
        Solved solved = new Net()
                .battery("B", "0", "s", 12, 0)
                .wire("FEED", "s", "a", 0.1)
                .branch("C", BranchKind.SUPPLY_CAPACITOR, "a", "0", new Law.SupplyCapacitor(1000))
                .output("Q", "a", "l", NO_OHMS, new Pulse("Q", 1000, 0, 0.5))
                .branch("L", BranchKind.LOAD, "l", "0", new Law.Inductive(0.725, 50))
                .branch("L.fw", BranchKind.FREEWHEEL_DIODE, "0", "l", new Law.Threshold(0, NO_OHMS))
                .solve();
        assertEquals(8, solved.flow("L").amps(), 1e-3);
        assertEquals(4, solved.flow("FEED").amps(), 1e-3);
        assertEquals(4, solved.flow("FEED").rmsAmps(), 1e-3);
        assertEquals(4, solved.flow("C").rmsAmps(), 1e-3);
        assertEquals(0, solved.flow("C").amps(), 1e-6);
    }

    @Test
    void theDriversSupplyOrGroundTakesBackWhatADiodeThereLeads() {
        // low side, diode from the output to the driver's supply pin, which has a wire of its own: that wire carries
        // the current
        // back while the output is off, the load's feed carries it all the time. 12 V, 1.2 ohm, D 0.25: 2.5 A
        Solved solved = new Net()
                .battery("B", "0", "s", 12, 0)
                .wire("LOADFEED", "s", "l", NO_OHMS)
                .branch("L", BranchKind.LOAD, "l", "d", new Law.Inductive(1.2, 100))
                .output("Q", "d", "g", NO_OHMS, new Pulse("Q", 1000, 0, 0.25))
                .wire("GROUND", "g", "0", NO_OHMS)
                .branch("Q.fw", BranchKind.FREEWHEEL_DIODE, "d", "v", new Law.Threshold(0, NO_OHMS))
                .wire("UNITFEED", "s", "v", NO_OHMS)
                .solve();
        assertEquals(2.5, solved.flow("LOADFEED").rmsAmps(), 1e-4);
        assertEquals(2.5, solved.flow("LOADFEED").amps(), 1e-4);
        // 2.5 A for 0.75 of the time, towards the battery
        assertEquals(-1.875, solved.flow("UNITFEED").amps(), 1e-4);
        assertEquals(2.5 * Math.sqrt(0.75), solved.flow("UNITFEED").rmsAmps(), 1e-4);
        assertEquals(1.25, solved.flow("GROUND").rmsAmps(), 1e-4);
        assertEquals(0.625, solved.flow("B").amps(), 1e-4);
    }
}
