package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.model.BrokenReferenceException;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.Tolerances;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.tables.WireTables;

/**
 * Takes random pieces out of the examples, as a person who is half done would leave them: the analysis always gives an
 * answer, and what it calls solved obeys Kirchhoff's laws.
 */
@BesideOthers
class MutilatedExamplesTest {

    private static final long SEED = 20251125;
    private static final int SAMPLE = 6;
    private static final int FULL = 60;
    private static final List<String> EXAMPLES = List.of("teaching", "faults", "star-ground", "workboat");

    @Test
    void anUnfinishedHarnessIsAlwaysAnalysed() throws Exception {
        int count = Campaign.count(SAMPLE, FULL);
        WireTables tables = WireTables.bundled();
        List<Harness> whole = new ArrayList<>();
        for (String example : EXAMPLES) {
            whole.add(HarnessFiles.read(Path.of("examples", example + ".harness.json")));
        }
        Random random = new Random(SEED);
        for (int k = 0; k < count; k++) {
            Harness harness = mutilated(whole.get(random.nextInt(whole.size())), random);
            Analysis analysis = Analyst.analyse(harness, tables, Cancel.NEVER);
            assertEquals(
                    harness.states().size(), analysis.evidence().solutions().size());
            for (Solution solution : analysis.evidence().solutions().values()) {
                double largest = solution.flows().values().stream()
                        .mapToDouble(flow -> Math.abs(flow.amps()))
                        .max()
                        .orElse(0);
                assertTrue(solution.residualAmps() <= Tolerances.IMBALANCE_RATIO * Math.max(1, largest));
            }
        }
    }

    /** One to ten elements fewer, and now and then a wire cut loose. */
    private static Harness mutilated(Harness whole, Random random) {
        Harness harness = whole;
        int cuts = 1 + random.nextInt(10);
        for (int k = 0; k < cuts; k++) {
            List<Element> elements = harness.elements().toList();
            Element element = elements.get(random.nextInt(elements.size()));
            if (element instanceof Wire wire && random.nextBoolean()) {
                harness = harness.with(wire.withEnds(wire.from(), new WireEnd.Loose()));
                continue;
            }
            try {
                harness = harness.without(element.id());
            } catch (BrokenReferenceException stillNeeded) {
                continue;
            }
        }
        return harness;
    }
}
