package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;

/** A thousand random networks: the linear ones against a dense solver, the others against their own laws. */
@BesideOthers
class RandomNetworksTest {

    /** Agreement with the dense solver, relative to each value. */
    private static final double AGREEMENT = 1e-9;

    /** Values smaller than this share of the largest are compared to it, not to themselves. */
    private static final double SMALL_SHARE = 1e-12;

    /** Relative error with which a nonlinear law may be missed. */
    private static final double LAW = 1e-9;

    @Test
    void linearNetworksAgreeWithADenseSolver() {
        for (int seed = 0; seed < RandomNetworks.count(); seed++) {
            Net net = RandomNetworks.linear(seed);
            Solved solved = net.solve();
            assertEquals(
                    IslandStatus.SOLVED,
                    solved.status("p0"),
                    solved.island("p0").sentence() + " seed " + seed);
            compare(net.network(), solved, seed);
        }
    }

    private static void compare(Network network, Solved solved, int seed) {
        DenseReference reference = new DenseReference(network);
        double mostVolts = 0;
        double mostAmps = 0;
        for (Branch branch : network.all()) {
            mostAmps = Math.max(mostAmps, Math.abs(reference.amps(branch).doubleValue()));
        }
        for (PointId point : network.points()) {
            mostVolts = Math.max(mostVolts, Math.abs(reference.volts(point).doubleValue()));
        }
        for (PointId point : network.points()) {
            near(reference.volts(point).doubleValue(), solved.volts(point.value()), mostVolts, point + " seed " + seed);
        }
        for (Branch branch : network.all()) {
            near(
                    reference.amps(branch).doubleValue(),
                    solved.amps(branch.id().value()),
                    mostAmps,
                    branch.id() + " seed " + seed);
        }
    }

    private static void near(double expected, double actual, double most, String what) {
        assertEquals(expected, actual, AGREEMENT * Math.max(Math.abs(expected), SMALL_SHARE * most), what);
    }

    @Test
    void nonlinearNetworksSatisfyTheirLawsAndKirchhoffs() {
        int solvedCount = 0;
        for (int seed = 0; seed < RandomNetworks.count(); seed++) {
            Net net = RandomNetworks.nonlinear(seed);
            // reading the solution checks Kirchhoff's laws
            Solved solved = net.solve();
            IslandStatus status = solved.status("r0");
            assertTrue(
                    status == IslandStatus.SOLVED || status == IslandStatus.OVERLOADED,
                    solved.island("r0").sentence() + " seed " + seed);
            if (status == IslandStatus.SOLVED) {
                solvedCount++;
                for (BranchFlow flow : solved.solution().flows().values()) {
                    checkOnState(flow, seed);
                }
            }
        }
        assertTrue(solvedCount > RandomNetworks.count() / 2, "only " + solvedCount + " had a solution");
    }

    /** Holds the on-state current of a branch against its law, written out once more. */
    private static void checkOnState(BranchFlow flow, int seed) {
        double volts = flow.onDropVolts();
        double amps = flow.onAmps();
        String what = flow.branch().id() + " " + flow.branch().law() + " " + volts + " V, seed " + seed;
        Law law = flow.branch().law();
        if (law instanceof Law.Resistance each) {
            assertEquals(volts, amps * each.ohms(), LAW * Math.max(1, Math.abs(volts)), what);
        } else if (law instanceof Law.ConstantPower each) {
            assertEquals(each.watts(), volts * amps, LAW * each.watts(), what);
        } else if (law instanceof Law.PowerLaw each) {
            double expected = each.ratedAmps() * Math.pow(Math.abs(volts) / each.ratedVolts(), each.exponent());
            assertEquals(Math.copySign(expected, volts), amps, LAW * Math.max(1e-3, expected), what);
        } else if (law instanceof Law.ConstantCurrent each && volts > 0.01) {
            assertEquals(each.amps(), amps, 0, what);
        } else if (law instanceof Law.Threshold each) {
            double above = Math.max(0, volts - each.forwardVolts());
            assertEquals(above, amps * each.ohms(), LAW, what);
        } else if (law instanceof Law.VoltageSource each) {
            double lawVolts = each.emfVolts() - each.ohms() * amps;
            assertTrue(amps >= each.minimumAmps() && amps <= each.maximumAmps(), what);
            if (amps == each.maximumAmps()) {
                assertTrue(-volts <= lawVolts + LAW, what);
            } else if (amps == each.minimumAmps()) {
                assertTrue(-volts >= lawVolts - LAW, what);
            } else {
                assertEquals(lawVolts, -volts, LAW, what);
            }
        }
    }
}
