package org.ohmloom.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.ReturnTrial;
import org.ohmloom.edit.RemoveWires;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Finding;
import org.ohmloom.units.Gauge;

/** What is foreseen of a change by superposition, held against a whole solution of the changed harness. */
class ForesightTest {

    /** Loads draw a little more or less where their ground moves, which superposition leaves out. */
    private static final double CURRENTS_HELD_SHARE = 0.03;

    private final Analysis analysis = AnalysedExamples.of("faults");
    private final ReturnTrial before = ReturnTrial.of(analysis, Cancel.NEVER);
    private final Candidates candidates = new Candidates(analysis.evidence());

    private Finding finding(String rule, String subject) {
        return analysis.findings().stream()
                .filter(each -> each.rule().equals(rule) && each.subjects().contains(subject))
                .findFirst()
                .orElseThrow();
    }

    private Foresight foresight(Finding finding) {
        return new Foresight(before, Targets.of(finding, before.evidence()).orElseThrow(), 240, Cancel.NEVER);
    }

    @Test
    void theOffsetForeseenIsTheOneSolved() {
        Finding finding = finding("unit-ground-offset", "U2");
        // 26 m of a return for 8 A, at twice the section of its second part: neither load nor temperature changes much
        Candidate larger =
                new Candidate(RemedyKind.LARGER_RETURN, SetWireGauge.of(new WireId("W107"), Gauge.parse("3 mm2")));
        double foreseen = foresight(finding).of(larger).orElseThrow().value();
        Harness changed = larger.on(analysis.harness()).orElseThrow();
        double solved = before.changed(changed, Cancel.NEVER).evidence().returns().offsets().stream()
                .filter(offset -> offset.point().kind() == ReferencePoint.Kind.UNIT_GROUND
                        && offset.point().owner().value().equals("U2"))
                .mapToDouble(Offset::worstVolts)
                .max()
                .orElseThrow();
        assertEquals(solved, foreseen, CURRENTS_HELD_SHARE * solved);
    }

    @Test
    void noChangeByItselfServesAControlUnitThatThreeLoadsDisturbAndTwoTogetherDo() {
        Finding finding = finding("unit-ground-offset", "U1");
        Combinations found = Combinations.of(candidates.of(finding), candidates, foresight(finding));
        assertTrue(found.alone().stream().noneMatch(Foresight.Foreseen::serves));
        assertFalse(found.serving().isEmpty());
        found.serving().forEach(each -> {
            assertTrue(each.candidate().steps().size() <= Combinations.MOST_CHANGES);
            assertTrue(each.value() <= 0.05, () -> each.candidate().edit().label());
        });
    }

    @Test
    void whoMakesMostOfWhatIsLeftIsToldForTheChangedHarness() {
        Finding finding = finding("unit-ground-offset", "U1");
        Candidate apart = candidates.of(finding).stream()
                .filter(each -> each.kind() == RemedyKind.OWN_RETURN)
                .findFirst()
                .orElseThrow();
        // the fan makes 70 of 130 mV; with the sensor returns in a splice of their own its current no longer passes the
        // unit
        Foresight.Foreseen without = foresight(finding).of(apart).orElseThrow();
        assertEquals("M1", without.causes().get(0).value());
        assertTrue(without.value() < 0.130 - 0.035);
    }

    @Test
    void theCountEndsTheSearchAndIsTold() {
        Finding finding = finding("unit-ground-offset", "U1");
        Foresight few =
                new Foresight(before, Targets.of(finding, before.evidence()).orElseThrow(), 3, Cancel.NEVER);
        Combinations found = Combinations.of(candidates.of(finding), candidates, few);
        assertEquals(3, found.count());
        assertTrue(found.spent());
        assertEquals(List.of(), found.serving());
    }

    @Test
    void aWireThatIsTakenOutCannotBeMovedAfterwards() {
        Candidate out = new Candidate(RemedyKind.OPENED_LOOP, new RemoveWires(List.of(new WireId("W25"))));
        Candidate larger =
                new Candidate(RemedyKind.LARGER_RETURN, SetWireGauge.of(new WireId("W25"), Gauge.parse("2.5 mm2")));
        assertTrue(out.on(analysis.harness()).isPresent());
        assertTrue(out.with(larger).on(analysis.harness()).isEmpty());
    }
}
