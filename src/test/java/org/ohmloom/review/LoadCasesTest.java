package org.ohmloom.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;

/** Loads asked on and not, their returns and their drops. */
@BesideOthers
class LoadCasesTest {

    @Test
    void aLoadThatWaitsForACommandMayBeFedAllTheTime() {
        Harness harness =
                Altered.of(Examined.breaking("load-fed-when-off"), "\"control\": \"feed\"", "\"control\": \"command\"");
        assertEquals(List.of(), Examined.findings(harness));
    }

    @Test
    void aLoadFedInSeveralStatesIsOneFinding() {
        Harness harness = Altered.of(
                Examined.breaking("load-fed-when-off"),
                "{\"id\": \"parked\", \"name\": \"Parked\", \"mode\": \"off\"}",
                "{\"id\": \"parked\", \"name\": \"Parked\", \"mode\": \"off\"},"
                        + " {\"id\": \"towed\", \"name\": \"Towed\", \"mode\": \"off\"},"
                        + " {\"id\": \"washed\", \"name\": \"Washed\", \"mode\": \"off\"}");
        List<Finding> findings = Examined.findings(harness);
        assertEquals(
                List.of("Beacon (L1) is not asked on in 'Parked' and 2 more states but gets 12.5 V."),
                findings.stream().map(Finding::message).toList());
        assertEquals(List.of("L1", "parked", "towed", "washed"), findings.get(0).highlight());
    }

    /** Rated 26 V: half is 13 V, more than the battery's 12.6 V. */
    @Test
    void aLampForTwiceTheVoltageIsNotFed() {
        Harness harness = Altered.of(Examined.within("load-not-fed"), "\"ratedVolts\": 25", "\"ratedVolts\": 26");
        assertEquals(1, Examined.findings(harness, "load-not-fed").size());
    }

    @Test
    void aPulledFuseLeavesItsLoadUnfed() {
        Harness harness = Altered.of(
                Examined.within("load-not-fed"),
                "\"components\": {\"L1\": true}",
                "\"components\": {\"F1\": false, \"L1\": true}");
        assertEquals(
                "Lamp (L1) is asked on in 'On' but gets 0 V of its 25 V.",
                Examined.findings(harness, "load-not-fed").get(0).message());
    }

    @Test
    void aRelayCoilWorksEitherWayRound() {
        Harness harness = Altered.of(
                Examined.within("solution-incomplete"),
                "\"terminal\": \"86\"",
                "\"terminal\": \"coil\"",
                "\"terminal\": \"85\"",
                "\"terminal\": \"86\"",
                "\"terminal\": \"coil\"",
                "\"terminal\": \"85\"");
        assertEquals(List.of(), Examined.findings(harness));
    }

    @Test
    void aCoilWithoutAReturnIsFound() {
        Harness harness = Altered.of(
                Examined.within("solution-incomplete"),
                "\"from\": {\"component\": \"K1\", \"terminal\": \"85\"},\n      \"to\": {\"component\": \"BT1\", \"terminal\": \"-\"}",
                "\"from\": {\"component\": \"K1\", \"terminal\": \"85\"},\n      \"to\": {\"loose\": true}");
        assertEquals(
                "Lamp relay (K1) has no way back from its negative terminal to any source.",
                Examined.findings(harness, "no-return-path").get(0).message());
    }

    @Test
    void withoutASourceNothingIsSaidAboutFeedsAndReturns() {
        Harness harness = Altered.of(
                Examined.breaking("load-not-fed"),
                "{\"kind\": \"battery\", \"emfVolts\": 12.6, \"internalOhms\": 0.005, \"capacityAmpHours\": 60}",
                "{\"kind\": \"bus-bar\", \"terminals\": [\"+\", \"-\"], \"jointOhms\": 0.001}");
        assertEquals(
                List.of("Not checked: there is no source, so nothing flows."),
                Examined.findings(harness).stream().map(Finding::message).toList());
    }

    /** The load's own limit of 0.5 V makes its 0.594 V an error. */
    @Test
    void aDropOverTheLoadsOwnLimitIsAnError() {
        Harness harness = Altered.of(
                Examined.within("drop-over-limit"),
                "\"control\": \"feed\"",
                "\"control\": \"feed\", \"allowedDropVolts\": 0.5");
        Finding finding = Examined.findings(harness, "drop-over-limit").get(0);
        assertEquals(Severity.ERROR, finding.severity());
        assertEquals("Limit set for this load", finding.source());
        assertTrue(finding.highlight().containsAll(List.of("W1", "W2", "W3")));
    }

    @Test
    void aLoadThatNoStateAsksOnIsToldInsteadOfPassedOver() {
        Harness harness = Altered.of(
                Examined.within("load-fed-when-off"),
                "\"components\": {\"L1\": true, \"S1\": true}",
                "\"components\": {}");
        assertEquals(
                List.of("Drop and feed not checked: no operating state asks on L1."),
                Examined.findings(harness).stream().map(Finding::message).toList());
    }
}
