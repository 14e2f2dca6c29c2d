package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Finding;
import org.ohmloom.review.RuleExamples;
import org.ohmloom.review.Rules;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.Governor;
import org.ohmloom.size.Requirement;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/**
 * Conductors chosen for what their fuse carries for ever. The example: a 15 A type C fuse carries 1.35 x 15 = 20.25 A for ever
 * (ISO 8820-3, first row with a longest time), whatever its load of 5 A takes; 0.75 mm2 in air of 30 C reaches its 100 C at
 * 17.4 A / 0.9 = 19.3 A, so it suits the fuse by its rating and not by that.
 */
@BesideOthers
class SlowOverloadTest {
    private static final WireTables TABLES = WireTables.bundled();
    private static final WireId FEED = new WireId("W2");
    private static final WireId RETURN = new WireId("W3");

    private static Harness example() {
        return Rules.ALL.stream()
                .map(rule -> rule.info())
                .filter(info -> info.id().equals("conductor-not-protected"))
                .map(RuleExamples::triggers)
                .findFirst()
                .orElseThrow();
    }

    private static Harness open() {
        return new SetWireGauge(List.of(FEED, RETURN), Optional.empty()).apply(example());
    }

    private static Analysis analysed(Harness harness) {
        return Analyst.analyse(harness, TABLES, Cancel.NEVER);
    }

    private static List<Finding> notProtected(Analysis analysis) {
        return analysis.findings().stream()
                .filter(finding -> finding.rule().equals("conductor-not-protected"))
                .toList();
    }

    private static Requirement requirement(ConductorChoice choice, Governor governor) {
        return choice.requirements().stream()
                .filter(each -> each.governor() == governor)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void feedAndReturnAreChosenForTheTwentyAmperesAFifteenAmpereFuseCarriesForEver() {
        Analysis analysis = analysed(open());
        for (WireId wire : List.of(FEED, RETURN)) {
            ConductorChoice choice = analysis.conductors().get(wire);
            assertEquals(
                    Optional.of(Gauge.metric(0.75)),
                    requirement(choice, Governor.PROTECTION).smallest());
            Requirement slow = requirement(choice, Governor.SLOW_OVERLOAD);
            assertEquals(Governor.SLOW_OVERLOAD, choice.governing().governor());
            assertEquals(choice.gauge(), slow.smallest());
            assertTrue(slow.reason().contains("15 A may carry 20.3 A for ever"), slow::reason);
            assertTrue(slow.reason().contains("of 100 °C by the heat balance"), slow::reason);
            assertTrue(slow.reason().contains("at 135 %"), slow::reason);
        }
        assertTrue(analysis.evidence().joint().isProvenLeast());
        assertEquals(List.of(), notProtected(analysis));
    }

    @Test
    void theNextThinnerSizeOfTheFamilyIsTheOneTheReviewWarnsOf() {
        Gauge chosen = analysed(open()).conductors().get(FEED).gauge().orElseThrow();
        Gauge thinner = TABLES.family("iso-6722-1").rows().stream()
                .map(row -> row.gauge())
                .filter(gauge -> gauge.compareTo(chosen) < 0)
                .reduce((one, next) -> next)
                .orElseThrow();
        Harness both = new SetWireGauge(List.of(FEED, RETURN), Optional.of(thinner)).apply(example());
        assertEquals(List.of(), notProtected(analysed(sizedBoth(chosen))));
        assertTrue(notProtected(analysed(both)).get(0).subjects().contains(FEED.value()), thinner::text);
    }

    private static Harness sizedBoth(Gauge gauge) {
        return new SetWireGauge(List.of(FEED, RETURN), Optional.of(gauge)).apply(example());
    }

    @Test
    void sizingAWireThatIsTooThinForItsFuseLeavesNothingToWarnOf() {
        Analysis start = analysed(example());
        assertEquals(1, notProtected(start).size());
        SizedHarness sized = SizedHarness.of(start, Cancel.NEVER);
        assertEquals(List.of(), notProtected(sized.analysis()));
        assertTrue(sized.conductors().get(FEED).gauge().orElseThrow().compareTo(Gauge.metric(0.75)) > 0);
    }
}
