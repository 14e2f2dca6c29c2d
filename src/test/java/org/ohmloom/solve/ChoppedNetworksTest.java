package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Pulse;

/** Forty random networks of outputs that switch, against a simulation in small steps of time. */
@BesideOthers
class ChoppedNetworksTest {

    private static final int NETWORKS = Campaign.FULL ? 40 : 6;
    private static final int PHASE_SETS = Campaign.FULL ? 200 : 40;

    /** Agreement of RMS and mean with the simulation, relative. */
    private static final double AGREEMENT = 0.01;

    /** Currents below this are compared to it, A. */
    private static final double SMALL_AMPS = 0.1;

    /** Mean power given and taken, over the power given. */
    private static final double ENERGY = 1e-9;

    @Test
    void meansAndRootMeanSquaresAreThoseOfASimulationInTime() {
        for (int seed = 0; seed < NETWORKS; seed++) {
            ChoppedNetwork network = ChoppedNetwork.random(seed);
            Solved solved = network.net().solve();
            double[] simulated = ChoppedSimulation.averages(network, PHASE_SETS, 1000 + seed);
            String where = "network " + seed + " " + network;
            compare(simulated, 0, solved.flow("FEED"), where);
            for (int load = 0; load < network.loads().size(); load++) {
                compare(simulated, 2 + 6 * load, solved.flow("L" + load), where);
                compare(simulated, 4 + 6 * load, solved.flow("F" + load), where);
                if (network.loads().get(load).freewheel() != ChoppedNetwork.Freewheel.NONE) {
                    compare(simulated, 6 + 6 * load, solved.flow("D" + load), where);
                }
            }
        }
    }

    private static void compare(double[] simulated, int place, BranchFlow flow, String where) {
        near(simulated[place], flow.amps(), "mean of " + flow.branch().id() + " in " + where);
        near(
                Math.sqrt(simulated[place + 1]),
                flow.rmsAmps(),
                "RMS of " + flow.branch().id() + " in " + where);
    }

    private static void near(double expected, double actual, String what) {
        assertEquals(expected, actual, AGREEMENT * Math.max(SMALL_AMPS, Math.abs(expected)), what);
    }

    @Test
    void meanPowerGivenIsMeanPowerTaken() {
        for (int seed = 0; seed < 40; seed++) {
            Solved solved = ChoppedNetwork.random(seed).net().solve();
            double miss = EnergyBalance.of(solved.solution().flows().values()).missRatio();
            assertTrue(miss <= ENERGY, "network " + seed + " misses " + miss);
        }
    }

    @Test
    void theCoilsOwnHeatIsTheMeanOfVoltageTimesCurrent() {
        // on one clock the balance of volt-seconds is exact: V I of a coil in the mean is its I^2 R, nothing stays in
        // it
        Solved solved = new Net()
                .battery("B", "0", "s", 12, 0)
                .wire("FEED", "s", "a", 0.2)
                .output("Q", "a", "l", 0.01, new Pulse("Q", 100, 0, 0.4))
                .branch("L", BranchKind.LOAD, "l", "0", new Law.Inductive(1, 0.02))
                .branch("D", BranchKind.FREEWHEEL_DIODE, "0", "l", new Law.Threshold(0.7, 0.01))
                .solve();
        BranchFlow coil = solved.flow("L");
        assertEquals(coil.rmsAmps() * coil.rmsAmps(), coil.watts(), 1e-8);
    }
}
