package org.ohmloom.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;

/** What falls too low, and what lets go, while something starts. */
@BesideOthers
class StartCasesTest {

    private static final String LOW = "supply-low-while-starting";
    private static final String RELAY = "relay-drops-out-while-starting";

    @Test
    void aControlUnitThatFallsTooLowIsAnErrorThatNamesWhatStarts() {
        Finding finding = Examined.findings(Examined.breaking(LOW), LOW).get(0);
        assertEquals(
                "Control unit (U1) gets 8.72 V while Pump (P1) starts in 'On'; it works from 9 V.", finding.message());
        assertEquals(Severity.ERROR, finding.severity());
        assertEquals(List.of("U1"), finding.subjects());
        assertEquals(List.of("U1", "P1", "on"), finding.highlight());
        assertTrue(finding.values().get("below").canonical() > 0);
    }

    /** 1 F over 0.2 A carries it from 12.6 V to 9 V for 18 s; the pump takes a fifth of a second. */
    @Test
    void aLargeInputCapacitorCarriesTheControlUnitThroughTheStart() {
        Harness harness = Altered.of(
                Examined.breaking(LOW),
                "\"minimumVolts\": 9",
                "\"minimumVolts\": 9, \"inputFarads\": 1, \"inputOhms\": 5");
        assertEquals(List.of(), Examined.findings(harness, LOW));
    }

    @Test
    void aPumpThatIsNotOnIsNotStarted() {
        Harness harness = Altered.of(Examined.breaking(LOW), "\"control\": \"feed\"", "\"control\": \"command\"");
        assertEquals(1, Examined.findings(harness, LOW).size());
        Harness off = Altered.of(harness, "\"components\": {\"P1\": true}", "\"components\": {\"P1\": false}");
        assertEquals(List.of(), Examined.findings(off, LOW));
    }

    @Test
    void aUnitThatHasTooLittleBeforeTheStartIsNotThisRulesConcern() {
        Harness harness = Altered.of(Examined.breaking(LOW), "\"minimumVolts\": 9", "\"minimumVolts\": 13");
        assertEquals(List.of(), Examined.findings(harness, LOW));
    }

    @Test
    void aRelayThatLetsGoIsAWarning() {
        Finding finding = Examined.findings(Examined.breaking(RELAY), RELAY).get(0);
        assertEquals(
                "The coil of Pump relay (K1) gets 7.13 V while Pump (P1) starts in 'On'; it drops out below 8 V.",
                finding.message());
        assertEquals(Severity.WARNING, finding.severity());
        assertEquals(List.of("K1"), finding.subjects());
    }
}
