package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.PointId;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Finding;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;
import org.ohmloom.tables.WireTables;

/**
 * The first numbers after an edit, begun near those before it, are those an analysis from nothing begins with: random edits of random
 * kinds, one after the other, each begun near what the one before it has left.
 */
@BesideOthers
class AfterAnEditTest {

    private static final long SEED = 20251201;
    private static final int EDITS = 6;
    private static final double SAME_RATIO = 1e-10;

    /** Numbers below this, A, V, ohm or deg C, have digits of their own no more. */
    private static final double LEAST = 1e-3;

    @Test
    void theFirstNumbersAfterAnEditAreThoseOfAnAnalysisFromNothing() {
        int count = Campaign.count(6, 40);
        List<Integer> findings = Campaign.each(count, number -> {
            RandomEdits edits = new RandomEdits(SEED + number);
            SolvedBefore before = new SolvedBefore();
            Harness harness = harness(number);
            first(harness, before, 1);
            int seen = 0;
            for (int edit = 0; edit < EDITS; edit++) {
                harness = edits.after(harness);
                if (before.isOf(harness.states().ids())) {
                    List<Analysis> told = first(harness, before, 2);
                    same(told.get(0), told.get(1), "harness " + number + " after edit " + edit);
                    seen += told.get(0).findings().size();
                }
            }
            return seen;
        });
        assertTrue(findings.stream().mapToInt(each -> each).sum() > count, "there was something to find");
    }

    @Test
    void aWholeAnalysisDoesNotDependOnWhatWasThereBefore() {
        Harness harness = AnalysedExamples.harness("teaching");
        SolvedBefore before = new SolvedBefore();
        Analyst.analyse(new RandomEdits(SEED).after(harness), WireTables.bundled(), Cancel.NEVER, before, soFar -> {});
        Analysis near = Analyst.analyse(harness, WireTables.bundled(), Cancel.NEVER, before, soFar -> {});
        assertTrue(near.isWhole());
        AnalysedExamples.of("teaching").evidence().solutions().forEach((state, anew) -> {
            assertEquals(anew.volts(), near.evidence().solutions().get(state).volts());
            assertEquals(anew.flows(), near.evidence().solutions().get(state).flows());
        });
        assertEquals(AnalysedExamples.of("teaching").findings(), near.findings());
    }

    private static Harness harness(int number) {
        return switch (number % 6) {
            case 0 -> ShipHarness.ofWires(100);
            case 1 -> AnalysedExamples.harness("workboat");
            case 2 -> CoachHarness.ofWires(60);
            case 3 -> AnalysedExamples.harness("faults");
            case 4 -> AnalysedExamples.harness("star-ground");
            default -> AnalysedExamples.harness("rescue-pickup");
        };
    }

    /** So many of the first snapshots of an analysis that is then stopped: the one begun near, where there is one, then that from nothing. */
    private static List<Analysis> first(Harness harness, SolvedBefore before, int count) {
        List<Analysis> told = new ArrayList<>();
        try {
            Analyst.analyse(harness, WireTables.bundled(), () -> told.size() == count, before, soFar -> {
                if (told.size() < count) {
                    told.add(soFar);
                }
            });
        } catch (CancellationException enough) {
            return told;
        }
        return told;
    }

    private static void same(Analysis toldNear, Analysis toldAnew, String what) {
        SortedMap<StateId, Solution> near = toldNear.evidence().solutions();
        toldAnew.evidence().solutions().forEach((state, anew) -> same(anew, near.get(state), what + " in " + state));
        Map<WireId, WireRating> ratings = toldNear.ratings();
        toldAnew.ratings().forEach((wire, anew) -> {
            assertEquals(anew.gauge(), ratings.get(wire).gauge(), what);
            close(anew.celsius(), ratings.get(wire).celsius(), what + ": deg C of " + wire);
            close(anew.ohms(), ratings.get(wire).ohms(), what + ": ohm of " + wire);
        });
        assertEquals(lines(toldAnew), lines(toldNear), what);
    }

    private static void same(Solution anew, Solution near, String what) {
        assertEquals(anew.status(), near.status(), what);
        assertEquals(anew.volts().keySet(), near.volts().keySet(), what);
        for (Map.Entry<PointId, Double> point : anew.volts().entrySet()) {
            close(point.getValue(), near.volts().get(point.getKey()), what + ": V at " + point.getKey());
        }
        for (Map.Entry<BranchId, BranchFlow> branch : anew.flows().entrySet()) {
            BranchFlow flow = near.flows().get(branch.getKey());
            close(branch.getValue().amps(), flow.amps(), what + ": A in " + branch.getKey());
            close(branch.getValue().rmsAmps(), flow.rmsAmps(), what + ": A RMS in " + branch.getKey());
        }
    }

    private static void close(double anew, double near, String what) {
        assertEquals(anew, near, SAME_RATIO * Math.max(LEAST, Math.abs(anew)), what);
    }

    private static List<String> lines(Analysis analysis) {
        assertFalse(analysis.isWhole());
        return analysis.findings().stream().map(AfterAnEditTest::line).toList();
    }

    private static String line(Finding finding) {
        return finding.severity() + " " + finding.rule() + " " + finding.subjects() + " " + finding.sentence();
    }
}
