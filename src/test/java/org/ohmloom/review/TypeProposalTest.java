package org.ohmloom.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetDeviceRating;
import org.ohmloom.edit.SetDeviceType;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.size.protection.Check;
import org.ohmloom.size.protection.DeviceProposal;
import org.ohmloom.size.protection.TypeCandidate;
import org.ohmloom.size.protection.TypeCandidate.Outcome;

/** Types and ratings proposed, each by the rows of ISO 8820-3 and -5 as fuse makers declare them, and the fix they make. */
@BesideOthers
class TypeProposalTest {

    private static final ComponentId F1 = new ComponentId("F1");

    private static DeviceProposal proposal(Harness harness) {
        return Examined.analysis(harness).evidence().protection().proposal(F1).orElseThrow();
    }

    private static TypeCandidate of(DeviceProposal proposal, String type) {
        return proposal.types().stream()
                .filter(each -> each.device().series().equals(type))
                .findFirst()
                .orElseThrow();
    }

    /** Applies the fix of the only finding of a rule, and sees it gone and nothing as grave in its place. */
    private static Edit mended(Harness harness, String rule) {
        List<Finding> before = Examined.findings(harness);
        Finding finding = before.stream()
                .filter(each -> each.rule().equals(rule))
                .findFirst()
                .orElseThrow();
        Edit fix = finding.fix().orElseThrow();
        List<Finding> after = Examined.findings(fix.apply(harness));
        assertTrue(after.stream().noneMatch(each -> each.rule().equals(rule)), after::toString);
        assertTrue(
                after.stream()
                        .filter(each -> each.severity().compareTo(finding.severity()) <= 0)
                        .allMatch(each ->
                                before.stream().anyMatch(known -> known.rule().equals(each.rule()))),
                after::toString);
        return fix;
    }

    @Test
    void aBladeFuseOnFortyEightVoltsBecomesItsFiftyEightVoltVersion() {
        // 51.2 V are more than 32 V; ISO 8820-3 lists 1000 A at 58 V for type C
        Harness harness = Examined.breaking("voltage-rating-exceeded");
        DeviceProposal proposal = proposal(harness);
        assertTrue(proposal.changesType());
        ProtectiveDevice chosen = proposal.chosen().device();
        assertEquals("ISO 8820-3 type C", chosen.series());
        assertEquals(10, chosen.ratingAmps());
        assertEquals(OptionalDouble.of(58), chosen.ratedVolts());
        assertEquals(OptionalDouble.of(1000), chosen.breakingAmps());
        assertTrue(
                proposal.chosen().source().english().contains("10 A ISO 8820-3 type C"),
                proposal.chosen().source()::english);
        assertEquals(Outcome.WOULD_SERVE, of(proposal, "ISO 8820-3 type F").outcome());
        assertTrue(of(proposal, "SAE J553 Type III").fails(Check.Aspect.VOLTAGE), "listed for 32 V only");
        assertEquals(
                "Make F1 ISO 8820-3 type C 10 A for 58 V",
                mended(harness, "voltage-rating-exceeded").label().english());
    }

    @Test
    void aFaultOfMoreThanAThousandAmperesTakesABoltedFuseForTwoThousand() {
        // 1.42 kA behind the fuse: type C breaks 1 kA, type SF30 2 kA. Its least rating is 30 A, 40.5 A for ever: 4 mm2
        // bears
        // that, 2.5 mm2 (39 A at its limit) does not
        Harness thin = Examined.breaking("breaking-capacity-exceeded");
        Harness thick = Altered.of(thin, "\"2.5 mm2\"", "\"4 mm2\"");
        DeviceProposal proposal = proposal(thick);
        assertEquals("ISO 8820-5 type SF30", proposal.chosen().device().series());
        assertEquals(30, proposal.chosen().device().ratingAmps());
        assertTrue(of(proposal, "ISO 8820-3 type C").fails(Check.Aspect.BREAKS_LARGEST));
        assertTrue(of(proposal, "ISO 8820-3 type C").reason().contains("it can interrupt 1 kA"));
        assertTrue(mended(thick, "breaking-capacity-exceeded") instanceof SetDeviceType);
        DeviceProposal none = proposal(thin);
        assertFalse(none.changes(), "what breaks the fault does not protect the conductor");
        assertTrue(of(none, "ISO 8820-5 type SF30").fails(Check.Aspect.PROTECTS));
    }

    @Test
    void aLongStartTakesASlowerTypeWhereNoRatingOfTheFastOneHolds() {
        // 120 A falling to 5 A in 1.5 s: above the 200 % row of a 40 A type C fuse, 80 A, for 1.5 ln(115/75) = 0.64 s,
        // where
        // it holds 0.15 s; above the 200 % row of a 35 A type E fuse, 70 A, for 0.86 s, where it holds 2 s
        Harness harness = Altered.of(
                Examined.breaking("start-opens-device"),
                "\"peakAmps\": 30",
                "\"peakAmps\": 120",
                "\"decaySeconds\": 0.4",
                "\"decaySeconds\": 1.5",
                "\"internalOhms\": 0.005",
                "\"internalOhms\": 0.02",
                "\"4 mm2\"",
                "\"16 mm2\"",
                "\"6 mm2\"",
                "\"16 mm2\"");
        DeviceProposal proposal = proposal(harness);
        assertEquals("ISO 8820-3 type E", proposal.chosen().device().series());
        assertTrue(of(proposal, "ISO 8820-3 type C").fails(Check.Aspect.RIDES_THROUGH));
        assertTrue(of(proposal, "ISO 8820-3 type F").fails(Check.Aspect.RIDES_THROUGH));
        assertTrue(mended(harness, "start-opens-device") instanceof SetDeviceType);
    }

    @Test
    void aSmallerRatingOfThePresentTypeComesBeforeAnyOtherType() {
        Harness harness = Examined.breaking("fault-not-cleared");
        Edit fix = mended(harness, "fault-not-cleared");
        assertTrue(fix instanceof SetDeviceRating, fix.label()::english);
        assertEquals(
                Outcome.WOULD_SERVE, of(proposal(harness), "ISO 8820-3 type F").outcome());
    }

    @Test
    void whatServesStaysAndBreakersThatResetByThemselvesAreRefused() {
        DeviceProposal proposal = proposal(Examined.within("device-exceeds-conductor"));
        assertFalse(proposal.changes());
        assertTrue(proposal.chosen().reason().startsWith("stays: meets all that is judged"));
        for (String type : List.of("SAE J553 Type I", "SAE J553 Type II")) {
            assertEquals(Outcome.REFUSED, of(proposal, type).outcome());
            assertTrue(of(proposal, type).reason().startsWith("it resets by itself"));
        }
        assertEquals(Outcome.REFUSED, of(proposal, "SAE J553 Type III").outcome());
        assertTrue(of(proposal, "SAE J553 Type III").reason().startsWith("cannot be judged"));
    }

    @Test
    void aDeviceInTheVehicleIsLeftAlone() {
        Harness harness = Altered.of(
                Examined.breaking("voltage-rating-exceeded"),
                "\"device\": {\"kind\": \"fuse\"",
                "\"existing\": true, \"device\": {\"kind\": \"fuse\"");
        assertTrue(Examined.findings(harness, "voltage-rating-exceeded")
                .get(0)
                .fix()
                .isEmpty());
    }
}
