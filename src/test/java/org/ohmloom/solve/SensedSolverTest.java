package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.Sensing;

/** Alternators that hold the voltage at a sense point, worked by hand. */
@BesideOthers
class SensedSolverTest {

    /** What the search holds the sense point to, V, with room for currents through some milliohms, A. */
    private static final double HELD = 1e-6;

    /** What "a handful of solutions" may be. */
    private static final int HANDFUL = 6;

    private static Net charging(double emfVolts, double acceptanceAmps) {
        return new Net()
                .branch(
                        "B",
                        BranchKind.SOURCE,
                        "0",
                        "b",
                        Law.VoltageSource.battery(emfVolts, 0.01, 0.02, acceptanceAmps));
    }

    private static SteadySources search(Net net, double setPointVolts) {
        Network network = net.network();
        Network sensed =
                network.withSensings(List.of(new Sensing(new BranchId("ALT"), new PointId("b"), setPointVolts)));
        return SensedSolver.searched(sensed, () -> false);
    }

    private static Solved solved(SteadySources search) {
        assertTrue(search.solves() <= HANDFUL, "took " + search.solves());
        return new Solved(search.solution());
    }

    @Test
    void theAlternatorMakesUpForTheDropOnTheWayToTheBattery() {
        // 14.4 V held at the battery, 13.4 V behind 20 mohm: it takes 50 A; with 30 A of load 80 A come through the 10
        // mohm
        // cable, so the alternator stands at 14.4 + 0.8 = 15.2 V
        Solved solved = solved(search(
                charging(13.4, 100)
                        .current("L", "b", "0", 30)
                        .wire("W", "a", "b", 0.01)
                        .regulated("ALT", "0", "a", 14.4, 0, 120),
                14.4));
        assertEquals(14.4, solved.volts("b"), HELD);
        assertEquals(15.2, solved.volts("a"), HELD);
        assertEquals(-50, solved.amps("B"), HELD);
        assertEquals(80, solved.amps("ALT"), HELD);
    }

    @Test
    void chargingStopsAtWhatTheBatteryAccepts() {
        // 14.4 V against 12.4 V over 20 mohm would be 100 A; the battery accepts 25 A
        Solved solved = solved(
                search(charging(12.4, 25).wire("W", "a", "b", 0.01).regulated("ALT", "0", "a", 14.4, 0, 120), 14.4));
        assertEquals(-25, solved.amps("B"), HELD);
        assertEquals(14.65, solved.volts("a"), HELD);
    }

    @Test
    void aCurrentLimitLeavesTheRestToTheBattery() {
        // 60 A of 90 A; the battery gives 30 A over 10 mohm: 12.6 - 0.3 = 12.3 V, below the set point
        Solved solved = solved(search(
                charging(12.6, 25)
                        .current("L", "b", "0", 90)
                        .wire("W", "a", "b", 0.01)
                        .regulated("ALT", "0", "a", 14.4, 0, 60),
                14.4));
        assertEquals(60, solved.amps("ALT"), HELD);
        assertEquals(30, solved.amps("B"), HELD);
        assertEquals(12.3, solved.volts("b"), HELD);
    }

    @Test
    void anAlternatorGivesNothingBackWhenTheBatteryStandsHigher() {
        // another charger holds 14.8 V at the battery: the alternator set to 14.4 V is idle
        Solved solved = solved(search(
                charging(13.0, 40)
                        .regulated("C", "0", "b", 14.8, 0, 200)
                        .wire("W", "a", "b", 0.01)
                        .regulated("ALT", "0", "a", 14.4, 0, 60),
                14.4));
        assertEquals(0, solved.amps("ALT"), HELD);
        assertEquals(14.8, solved.volts("b"), HELD);
    }

    @Test
    void theMeanIsHeldWhileAnOutputSwitches() {
        // a 0.48 ohm heater at half duty at the battery, 29.9 A while on: the mean stands at 14.4 V; the swing of 14.95
        // A
        // goes through 10 mohm of battery beside 20 mohm of cable, 6.67 mohm: 0.1 V below it while on
        Solved solved = solved(search(
                charging(13.0, 100)
                        .output("Q", "b", "h", 1e-3, 0.5)
                        .heater("L", "h", "0", 0.48)
                        .wire("W", "a", "b", 0.02)
                        .regulated("ALT", "0", "a", 14.4, 0, 150),
                14.4));
        assertEquals(14.4, solved.volts("b"), HELD);
        // 1 mohm of output and 480 mohm of heater
        assertEquals(14.3, solved.flow("L").onDropVolts() * 0.481 / 0.48, 0.005);
    }

    @Test
    void aSensePointNothingLeadsToLeavesTheSetPointAtTheTerminals() {
        Network network = new Net()
                .regulated("ALT", "0", "a", 14.4, 0.01, 60)
                .current("L", "a", "0", 20)
                .open("S", "a", "b")
                .network()
                .withSensings(List.of(new Sensing(new BranchId("ALT"), new PointId("b"), 14.4)));
        // 14.4 V - 20 A x 10 mohm = 14.2 V
        new Solved(SensedSolver.solve(network, () -> false)).hasVolts("a", 14.2);
    }

    @Test
    void twoAlternatorsHoldTwoSensePointsAtOnce() {
        // A holds 14.4 V at p, C holds 14.2 V at q, 20 mohm between p and q: (14.4 - 14.2) / 0.02 = 10 A from p to q
        Network network = new Net()
                .regulated("A", "0", "a", 14.4, 0, 200)
                .wire("WA", "a", "p", 0.01)
                .current("LP", "p", "0", 40)
                .wire("W", "p", "q", 0.02)
                .current("LQ", "q", "0", 50)
                .wire("WC", "c", "q", 0.01)
                .regulated("C", "0", "c", 14.2, 0, 200)
                .network()
                .withSensings(List.of(
                        new Sensing(new BranchId("A"), new PointId("p"), 14.4),
                        new Sensing(new BranchId("C"), new PointId("q"), 14.2)));
        Solved solved = new Solved(SensedSolver.solve(network, () -> false));
        assertEquals(50, solved.amps("A"), 1e-4);
        assertEquals(40, solved.amps("C"), 1e-4);
    }

    @Test
    void aBatteryTooColdToChargeStillFindsTheBalanceBelowItsVoltage() {
        // 19 A of limit, 280 W asked, 19.44 A at 14.4 V: from there down nothing holds the voltage until the battery
        // gives at 12.6 V:
        // V = 12.6 - 0.01 x (280 / V - 19): V^2 - 12.79 V + 2.8 = 0, V = 12.5671
        Solved solved = new Net()
                .regulated("ALT", "0", "b", 14.4, 0, 19)
                .branch("B", BranchKind.SOURCE, "0", "b", Law.VoltageSource.battery(12.6, 0.01, 0.02, 0))
                .power("L", "b", "0", 280)
                .solve();
        assertEquals((12.79 + Math.sqrt(12.79 * 12.79 - 11.2)) / 2, solved.volts("b"), HELD);
        assertEquals(19, solved.amps("ALT"), HELD);
    }

    @Test
    void randomNetworksMeetExactlyOneOfTheThreeConditions() {
        // 400 networks of loads of all kinds, batteries and diodes: regulated, or full and below, or idle and above
        Random random = new Random(20260211);
        int[] met = new int[3];
        for (int run = 0; run < 400; run++) {
            double limit = 5 + 120 * random.nextDouble();
            double setPoint = 13.2 + 2 * random.nextDouble();
            Net net = charging(11.5 + 4 * random.nextDouble(), 60 * random.nextDouble())
                    .wire("W", "a", "b", 0.002 + 0.05 * random.nextDouble())
                    .regulated("ALT", "0", "a", setPoint, 0.005 * random.nextDouble(), limit)
                    .wire("W2", "b", "c", 0.01 * (1 + random.nextDouble()))
                    .lamp("L1", "c", "0", 12 * random.nextDouble() + 1, 12)
                    .power("L2", "c", "0", 300 * random.nextDouble() + 1)
                    .diode("D", "c", "d", 0.7, 0.01)
                    .heater("L3", "d", "0", 0.5 + random.nextDouble());
            Solved solved = new Solved(search(net, setPoint).solution());
            assertEquals(
                    IslandStatus.SOLVED,
                    solved.status("b"),
                    "run " + run + ": " + solved.island("b").sentence());
            double miss = solved.volts("b") - setPoint;
            double amps = solved.amps("ALT");
            boolean holds = Math.abs(miss) <= HELD;
            boolean full = amps >= limit - HELD && miss < HELD;
            boolean idle = amps <= HELD && miss > -HELD;
            assertTrue(holds || full || idle, "run " + run + ": " + miss + " V, " + amps + " of " + limit + " A");
            met[holds ? 0 : full ? 1 : 2]++;
        }
        for (int each : met) {
            assertTrue(each > 0, "all three occur");
        }
    }

    @Test
    void withOutputsAtADutyTheMeansMeetTheThreeConditionsAndTheBatterysLaw() {
        // 60 networks with two outputs at a duty: the battery's mean current is what its law asks at its mean voltage
        Random random = new Random(7);
        for (int run = 0; run < 60; run++) {
            double limit = 10 + 60 * random.nextDouble();
            double emf = 12 + random.nextDouble();
            double acceptance = 20 * random.nextDouble();
            Solved solved = new Solved(search(
                            charging(emf, acceptance)
                                    .wire("W", "a", "b", 0.002 + 0.02 * random.nextDouble())
                                    .regulated("ALT", "0", "a", 14.2, 0.005, limit)
                                    .output("Q1", "b", "c", 0.005, 0.1 + 0.8 * random.nextDouble())
                                    .heater("L1", "c", "0", 0.3 + random.nextDouble())
                                    .output("Q2", "b", "d", 0.005, 0.1 + 0.8 * random.nextDouble())
                                    .lamp("L2", "d", "0", 10 * random.nextDouble() + 1, 12)
                                    .current("L3", "b", "0", 20 * random.nextDouble()),
                            14.2)
                    .solution());
            double volts = solved.volts("b");
            double over = emf - volts;
            double asked = over >= 0 ? over / 0.01 : Math.max(over / 0.02, -acceptance);
            assertEquals(asked, solved.amps("B"), HELD, "run " + run);
            double amps = solved.amps("ALT");
            assertTrue(amps <= limit + HELD && amps >= 0, "run " + run);
            assertTrue(Math.abs(volts - 14.2) <= HELD || amps >= limit - HELD && volts < 14.2, "run " + run);
        }
    }

    @Test
    void aSearchThatRemembersAnEarlierOneTakesFewSolutions() {
        // the cable a hundredth warmer: the electromotive force moves by 0.8 V x 0.01 = 8 mV
        SourceMemory memory = new SourceMemory();
        for (double ohms : new double[] {0.01, 0.0101}) {
            Network network = charging(13.4, 100)
                    .current("L", "b", "0", 30)
                    .wire("W", "a", "b", ohms)
                    .regulated("ALT", "0", "a", 14.4, 0, 120)
                    .network()
                    .withSensings(List.of(new Sensing(new BranchId("ALT"), new PointId("b"), 14.4)));
            SteadySources search = SensedSolver.searched(network, memory, () -> false);
            assertTrue(search.solves() <= (ohms > 0.01 ? 3 : HANDFUL), "took " + search.solves());
            assertEquals(14.4 + 80 * ohms, new Solved(search.solution()).volts("a"), HELD);
        }
    }
}
