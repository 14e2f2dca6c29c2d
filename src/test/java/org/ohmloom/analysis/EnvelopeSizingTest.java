package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.edit.SetDeviceRating;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.review.RuleExamples;
import org.ohmloom.review.Rules;
import org.ohmloom.size.Governor;
import org.ohmloom.size.Requirement;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/** Conductors chosen by the worst combination the load groups allow, on the example of the rule about it. */
@BesideOthers
class EnvelopeSizingTest {
    private static final WireTables TABLES = WireTables.bundled();
    private static final WireId FEED = new WireId("W2");

    /**
     * The feed of three loads of 9 A, 8 A and 4 A, at most two at once, without a size, behind 5 A; the states run one at a
     * time.
     */
    private static Harness unsized() {
        Harness harness = Rules.ALL.stream()
                .map(rule -> rule.info())
                .filter(info -> info.id().equals("envelope-over-limit"))
                .map(RuleExamples::triggers)
                .findFirst()
                .orElseThrow();
        return new SetDeviceRating(new ComponentId("F1"), 5)
                .apply(new SetWireGauge(List.of(FEED), Optional.empty()).apply(harness));
    }

    private static Requirement ampacity(Analysis analysis) {
        return analysis.conductors().get(FEED).requirements().stream()
                .filter(requirement -> requirement.governor() == Governor.AMPACITY)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theFeedIsSizedForTheTwoLargestLoadsAtOnce() {
        Harness grouped = unsized();
        Harness free = grouped.withoutAll(grouped.loadGroups().ids());
        Analysis byEnvelope = Analyst.analyse(grouped, TABLES, Cancel.NEVER);
        Analysis byStates = Analyst.analyse(free, TABLES, Cancel.NEVER);
        // 9 + 8 = 17 A against 9 A in the worst named state
        assertTrue(
                ampacity(byEnvelope).reason().startsWith("carries 17 A RMS in the worst combination of loads;"),
                ampacity(byEnvelope)::reason);
        assertTrue(ampacity(byStates).reason().startsWith("carries 9 A RMS"), ampacity(byStates)::reason);
        Gauge larger = byEnvelope.ratings().get(FEED).gauge();
        assertTrue(larger.compareTo(byStates.ratings().get(FEED).gauge()) > 0, larger::text);
    }

    @Test
    void theSizedHarnessKeepsTheSizeTheEnvelopeAsksFor() {
        Analysis start = Analyst.analyse(unsized(), TABLES, Cancel.NEVER);
        SizedHarness sized = SizedHarness.of(start, Cancel.NEVER);
        // 17 A by the envelope also raise the fuse, to 25 A: the feed is no thinner than before
        Gauge feed = sized.analysis().harness().wires().get(FEED).gauge().orElseThrow();
        assertTrue(feed.compareTo(start.ratings().get(FEED).gauge()) >= 0, feed::text);
        assertEquals(25, sized.devices().get(new ComponentId("F1")).ratingAmps().orElseThrow());
    }
}
