package org.ohmloom.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.ReturnTrial;
import org.ohmloom.edit.PutElements;
import org.ohmloom.edit.RemoveWires;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Finding;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/** What is foreseen of a change by superposition, held against a whole solution of the changed harness. */
@BesideOthers
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
            assertTrue(
                    each.value() <= 0.05, () -> each.candidate().edit().label().english());
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
        assertTrue(out.with(larger).orElseThrow().on(analysis.harness()).isEmpty());
    }

    @Test
    void twoReturnsToOnePinShareTheSpliceMadeThere() {
        ReturnPlaces places = new ReturnPlaces(analysis.evidence());
        OwnReturns own = new OwnReturns(
                places,
                new Lengths(
                        analysis.harness(),
                        analysis.evidence().routes(),
                        analysis.evidence().tables()));
        // X8.4 has one wire, W31: W29 of the one sensor and W99 of the other can only come to it by a splice
        Candidate one = own.of(new ComponentId("B-P")).get(0);
        Candidate other = own.of(new ComponentId("B-T")).get(0);
        Harness both = one.with(other).orElseThrow().on(analysis.harness()).orElseThrow();
        assertEquals(
                analysis.harness().splices().all().size() + 1,
                both.splices().all().size());
        assertEquals(List.of("W-SP-X8-4"), ending(both, "X8.4"));
        assertEquals(List.of("W-SP-X8-4", "W29", "W31", "W99"), ending(both, "SP-X8-4"));
    }

    private static List<String> ending(Harness harness, String place) {
        return harness.wires().all().stream()
                .filter(wire -> wire.ends().stream().anyMatch(end -> end.text().equals(place)))
                .map(wire -> wire.id().value())
                .sorted()
                .toList();
    }

    @Test
    void changesThatWouldMakeTwoThingsOfOneNameAreNotJoined() {
        Splice near = splice("beside the pump");
        Candidate one = new Candidate(RemedyKind.OWN_RETURN, PutElements.one(Text.of("Add a splice"), near));
        Candidate other = new Candidate(
                RemedyKind.OWN_RETURN, PutElements.one(Text.of("Add a splice"), splice("beside the fan")));
        assertTrue(one.with(other).isEmpty());
        assertEquals(one.steps(), one.with(one).orElseThrow().steps(), "what is the same is done once");
    }

    private static Splice splice(String name) {
        return new Splice(new SpliceId("SP-1"), name, 0, Optional.empty(), Optional.empty(), false, Optional.empty());
    }
}
