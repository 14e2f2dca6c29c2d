package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.review.Rule;
import org.ohmloom.review.RuleExamples;
import org.ohmloom.review.Rules;
import org.ohmloom.review.Severity;
import org.ohmloom.tables.WireTables;

/** Types of protective devices when all is chosen anew. */
@BesideOthers
class ProposedDevicesTest {

    /** The example of rule voltage-rating-exceeded: blade fuses for 32 V in a 48 V harness. */
    private static Analysis start() {
        return example("voltage-rating-exceeded");
    }

    private static Analysis example(String rule) {
        Harness harness = RuleExamples.triggers(Rules.ALL.stream()
                .map(Rule::info)
                .filter(info -> info.id().equals(rule))
                .findFirst()
                .orElseThrow());
        return Analyst.analyse(harness, WireTables.bundled(), Cancel.NEVER);
    }

    private static ProtectiveDevice device(Harness harness, ComponentId id) {
        return (ProtectiveDevice) harness.components().get(id).device();
    }

    @Test
    void aFuseForTooLowAVoltageStaysUnlessAllIsChosenAnew() {
        Analysis start = start();
        SizedHarness kept = SizedHarness.of(start, Cancel.NEVER);
        assertTrue(kept.proposed().isEmpty());
        SizedHarness anew = SizedHarness.anew(start, Cancel.NEVER);
        assertFalse(anew.proposed().isEmpty());
        anew.proposed().forEach((id, proposal) -> {
            assertEquals(proposal.chosen().device(), device(anew.analysis().harness(), id));
            assertTrue(proposal.mends());
        });
        assertTrue(anew.analysis().count(Severity.ERROR) <= kept.analysis().count(Severity.ERROR));
        // what was proposed needs no further proposal
        anew.proposed()
                .keySet()
                .forEach(id -> assertFalse(anew.analysis()
                        .evidence()
                        .protection()
                        .proposal(id)
                        .orElseThrow()
                        .mends()));
    }

    @Test
    void aRatingAndAProposalAreJudgedByTheSameFollowedStart() {
        Analysis analysis = example("start-opens-device");
        ComponentId fuse = analysis.devices().firstKey();
        String reason = analysis.devices().get(fuse).reason();
        assertTrue(reason.contains("followed over time in state"), reason);
        String judged = analysis.evidence().protection().of(fuse).orElseThrow().starts().stream()
                .map(start -> start.shape().text().english())
                .findFirst()
                .orElseThrow();
        assertTrue(reason.contains(judged), judged);
    }
}
