package org.ohmloom.solve.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.Solution;

/** The envelope of random harnesses against every allowed combination solved in full. */
@BesideOthers
class EnvelopeAgainstAllCombinationsTest {
    /** Tolerance of what is called proven, A or V. */
    private static final double SAME = 1e-4;

    private static final int HARNESSES = 25;
    private static final int LOADS = 7;

    private final SortedMap<BranchId, Double> mostAmps = new TreeMap<>();
    private final SortedMap<ComponentId, Double> mostDrop = new TreeMap<>();
    private int proven;
    private int all;

    private SituationEnvelope compare(SketchedLoads loads) {
        Harness harness = loads.harness();
        mostAmps.clear();
        mostDrop.clear();
        List<Solution> tried = loads.tried(harness);
        for (Solution solution : tried) {
            assertEquals(IslandStatus.SOLVED, solution.status(), () -> solution.islands()
                    .toString());
            solution.flows()
                    .values()
                    .forEach(flow -> mostAmps.merge(flow.branch().id(), Math.abs(flow.onAmps()), Math::max));
            solution.loads().values().stream()
                    .filter(load -> loads.runs(solution, load.load()))
                    .forEach(load -> mostDrop.merge(load.load(), load.onDropVolts(), Math::max));
        }
        Envelope envelope = SketchedLoads.envelope(harness);
        assertEquals(1, envelope.situations().size(), () -> envelope.notes().toString());
        return envelope.situations().get(0);
    }

    private void judge(SituationEnvelope envelope, boolean exact, String place) {
        mostAmps.forEach((branch, most) -> {
            BranchEnvelope found = envelope.branches().get(branch);
            double value = found == null ? 0 : Math.abs(found.onAmps());
            assertTrue(value <= most + SAME, place + ": " + branch + " has " + value + ", more than any, " + most);
            if (found != null) {
                found.onBoundAmps()
                        .ifPresent(bound -> assertTrue(
                                bound >= most - SAME, place + ": " + branch + " bound " + bound + " below " + most));
                if (found.onProven() || exact) {
                    assertEquals(most, value, SAME, place + ": " + branch);
                }
                all++;
                proven += found.onProven() ? 1 : 0;
                assertTrue(!exact || found.onProven(), place + ": " + branch + " is not proven");
            } else {
                assertEquals(0, most, SAME, place + ": " + branch + " is missing");
            }
        });
        mostDrop.forEach((load, most) -> {
            LoadEnvelope found = envelope.loads().get(load);
            assertTrue(found.dropVolts() <= most + SAME, place + ": " + load);
            found.boundVolts()
                    .ifPresent(bound -> assertTrue(
                            bound >= most - SAME, place + ": " + load + " bound " + bound + " below " + most));
            if (found.isProven() || exact) {
                assertEquals(most, found.dropVolts(), SAME, place + ": " + load);
            }
            assertTrue(!exact || found.isProven(), place + ": " + load + " is not proven");
        });
    }

    @Test
    void constantCurrentsOnABatteryAreExactAndProven() {
        for (long seed = 0; seed < HARNESSES; seed++) {
            judge(compare(new SketchedLoads(seed, LOADS, true, false)), true, "seed " + seed);
        }
    }

    @Test
    void constantCurrentsBesideALimitedAlternatorAreWithinTheirBoundsAndMostlyProven() {
        for (long seed = 100; seed < 100 + HARNESSES; seed++) {
            judge(compare(new SketchedLoads(seed, LOADS, true, true)), false, "seed " + seed);
        }
        assertTrue(proven > 0.9 * all, proven + " of " + all);
    }

    @Test
    void lampsHeatersPowersAndRelaysAreWithinTheirBoundsAndMostlyProven() {
        for (long seed = 200; seed < 200 + HARNESSES; seed++) {
            judge(compare(new SketchedLoads(seed, LOADS, false, seed % 2 == 0)), false, "seed " + seed);
        }
        assertTrue(proven > 0.5 * all, proven + " of " + all);
    }
}
