package org.ohmloom.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.solve.envelope.BranchEnvelope;
import org.ohmloom.solve.envelope.SituationEnvelope;

/** What the envelope shows beyond the named states, on the rule's own examples. */
@BesideOthers
class EnvelopeCasesTest {
    private static final String RULE = "envelope-over-limit";
    private static final double EXACT = 1e-6;

    @Test
    void twoOfThreeLoadsAtOnceBringTheFuseOverItsRating() {
        // 9 A, 8 A and 4 A, at most two at once: 9 + 8 = 17 A through a fuse of 15 A; the states reach 9 A
        Harness harness = Examined.breaking(RULE);
        List<Finding> findings = Examined.findings(harness, RULE);
        assertEquals(1, findings.size(), findings::toString);
        assertEquals(List.of("F1"), findings.get(0).subjects());
        assertEquals(17, findings.get(0).values().get("current").canonical(), EXACT);
        assertEquals(9, findings.get(0).values().get("named").canonical(), EXACT);
        assertTrue(findings.get(0).highlight().containsAll(List.of("L1", "L2")));
    }

    @Test
    void onePumpAtATimeLeavesTheFuseItsMargin() {
        // 9 A or 8 A, and 4 A beside: 13 A
        Analysis analysis = Examined.analysis(Examined.within(RULE));
        SituationEnvelope situation =
                analysis.evidence().envelope().situations().get(0);
        BranchEnvelope fuse = situation.branches().get(new BranchId("F1"));
        assertEquals(13, fuse.rmsAmps(), EXACT);
        assertTrue(fuse.rmsProven() && fuse.onProven());
        assertTrue(situation
                .combination(fuse.rmsCombination())
                .orElseThrow()
                .loads()
                .containsAll(List.of(new ComponentId("L1"), new ComponentId("L3"))));
    }

    @Test
    void withoutLoadGroupsTheRuleIsSilentAndTheEnvelopeIsThere() {
        Harness grouped = Examined.breaking(RULE);
        Harness free = grouped.withoutAll(grouped.loadGroups().ids());
        Analysis analysis = Examined.analysis(free);
        assertEquals(
                0,
                analysis.findings().stream()
                        .filter(finding -> finding.rule().equals(RULE))
                        .count());
        assertTrue(!analysis.evidence().envelope().hasGroups());
        // nothing forbids 9 + 8 + 4 A
        SituationEnvelope situation =
                analysis.evidence().envelope().situations().get(0);
        assertEquals(21, situation.branches().get(new BranchId("W2")).rmsAmps(), EXACT);
    }

    @Test
    void withLoadGroupsTheEnvelopeSizesDevicesWithoutThemTheNamedStatesDo() {
        Harness grouped = Examined.breaking(RULE);
        Harness free = grouped.withoutAll(grouped.loadGroups().ids());
        // fuses are loaded to 80 % at most: 17 A / 0.8 = 21.25 A ask for 25 A, 9 A / 0.8 = 11.25 A for 15 A
        assertEquals(25, ratingAmps(grouped), EXACT);
        assertEquals(15, ratingAmps(free), EXACT);
    }

    private static double ratingAmps(Harness harness) {
        return Examined.analysis(harness)
                .devices()
                .get(new ComponentId("F1"))
                .ratingAmps()
                .orElseThrow();
    }
}
