package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Harness;

/** The check of a solution finds what is wrong with it, to the right size. */
@BesideOthers
class ResidualCheckTest {

    private static final double EXACT = 1e-12;

    /** 12 V, 1 ohm wire, 5 ohm load: 2 A. */
    private static NetworkSolution solution() {
        return NetworkSolver.solve(
                new Net()
                        .battery("B", "0", "a", 12, 0)
                        .wire("W", "a", "b", 1)
                        .heater("L", "b", "0", 5)
                        .network(),
                () -> false);
    }

    private static List<BranchFlow> withAmps(String branch, double amps) {
        List<BranchFlow> flows = new ArrayList<>();
        for (BranchFlow flow : solution().flows().values()) {
            flows.add(
                    flow.branch().id().value().equals(branch)
                            ? new BranchFlow(
                                    flow.branch(),
                                    flow.island(),
                                    flow.ohms(),
                                    amps,
                                    flow.rmsAmps(),
                                    flow.onAmps(),
                                    flow.dropVolts(),
                                    flow.onDropVolts(),
                                    flow.watts())
                            : flow);
        }
        return flows;
    }

    @Test
    void aTrueSolutionPasses() {
        NetworkSolution solution = solution();
        assertTrue(ResidualCheck.of(solution.flows().values(), solution.volts()).isWithinTolerances());
    }

    @Test
    void aWrongCurrentOfALoadIsAnImbalance() {
        // 2.5 A instead of 2 A through the load: half an ampere too many at b and at 0
        ResidualCheck check = ResidualCheck.of(withAmps("L", 2.5), solution().volts());
        assertEquals(0.5, check.amps(), EXACT);
        assertEquals(0.5 / 2.5, check.imbalanceRatio(), EXACT);
        assertEquals(0, check.volts(), EXACT);
        assertFalse(check.isWithinTolerances());
    }

    @Test
    void aWrongCurrentOfAWireMissesOhmsLawToo() {
        // 2.5 A x 1 ohm against 2 V, at 12 V
        ResidualCheck check = ResidualCheck.of(withAmps("W", 2.5), solution().volts());
        assertEquals(0.5, check.volts(), EXACT);
        assertEquals(0.5 / 12, check.dropRatio(), EXACT);
    }

    @Test
    void aWrongVoltageMissesOhmsLaw() {
        SortedMap<PointId, Double> volts = new TreeMap<>(solution().volts());
        volts.merge(new PointId("b"), 0.001, Double::sum);
        ResidualCheck check = ResidualCheck.of(solution().flows().values(), volts);
        assertEquals(0.001, check.volts(), EXACT);
        assertEquals(0, check.amps(), EXACT);
        assertFalse(check.isWithinTolerances());
    }

    @Test
    void theSolutionOfAHarnessCarriesItsResidual() {
        Harness harness = Harnesses.empty();
        Solution solution = DcSolver.solve(solution().network(), harness, () -> false);
        assertTrue(solution.residualAmps() <= EXACT);
        assertTrue(solution.residualVolts() <= EXACT);
        assertEquals(IslandStatus.SOLVED, solution.status());
    }
}
