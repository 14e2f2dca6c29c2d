package org.ohmloom.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;

/** How far from the battery a protective device may sit, by design basis and enclosure. 1 in = 25.4 mm. */
@BesideOthers
class PlacementCasesTest {

    private static final String RULE = "device-too-far-from-source";
    private static final Harness FAR = Examined.breaking(RULE);

    private static List<Finding> findings(String basis, String lengthMetres) {
        return Examined.findings(
                Altered.of(
                        FAR,
                        "\"basis\": \"abyc-e-11\"",
                        "\"basis\": \"" + basis + "\"",
                        "\"insulation\": \"105C\"",
                        "\"insulation\": \"" + (basis.equals("road-vehicle") ? "ISO 6722-1 class B" : "105C") + "\"",
                        "\"lengthMetres\": 0.179",
                        "\"lengthMetres\": " + lengthMetres),
                RULE);
    }

    /** ABYC E-11: 7 in = 177.8 mm for an open conductor. */
    @Test
    void sevenInchesOfOpenConductorPassAndAMillimetreMoreDoesNot() {
        assertEquals(List.of(), findings("abyc-e-11", "0.1778"));
        assertEquals(Severity.ERROR, findings("abyc-e-11", "0.1788").get(0).severity());
    }

    /** 33 CFR 183.460 (a): 72 in = 1.8288 m for the output conductor of a battery. */
    @Test
    void theFederalRuleGivesTheBatterysOwnConductorSeventyTwoInches() {
        assertEquals(List.of(), findings("33-cfr-183", "1.82"));
        Finding far = findings("33-cfr-183", "1.84").get(0);
        assertEquals(Severity.ERROR, far.severity());
        assertEquals(1.8288, far.values().get("limit").canonical(), 1e-9);
    }

    @Test
    void onARoadVehicleTheSameDistanceIsANoteFromCommonPractice() {
        Finding note = findings("road-vehicle", "0.179").get(0);
        assertEquals(Severity.NOTE, note.severity());
        assertTrue(note.source().contains("common practice"), note.source());
    }

    @Test
    void aConduitAllTheWayAllowsSeventyTwoInchesAndTapeDoesNot() {
        assertEquals(List.of(), Examined.findings(laid("conduit"), RULE));
        assertEquals(
                "F1 sits 1 m of conductor from BT1; 178 mm is the limit (conductor not sheathed or enclosed).",
                Examined.findings(laid("tape"), RULE).get(0).message());
    }

    private static Harness laid(String covering) {
        return Altered.of(
                FAR,
                "  \"components\": [",
                "  \"breakouts\": [{\"id\": \"B1\", \"name\": \"Battery\"}, {\"id\": \"B2\", \"name\": \"Fuse\"}],"
                        + " \"segments\": [{\"id\": \"SEG1\", \"from\": \"B1\", \"to\": \"B2\", \"lengthMetres\": 1,"
                        + " \"covering\": {\"kind\": \"" + covering + "\", \"text\": \"10 mm\"}}],"
                        + " \"components\": [",
                "\"name\": \"Battery\",\n      \"device\"",
                "\"name\": \"Battery\", \"at\": \"B1\", \"device\"",
                "\"name\": \"Fuse\",\n      \"device\"",
                "\"name\": \"Fuse\", \"at\": \"B2\", \"device\"",
                "\"lengthMetres\": 0.179",
                "\"lengthMetres\": 1");
    }

    @Test
    void anUnknownLengthIsToldInsteadOfPassedOver() {
        Harness harness = Altered.of(FAR, "\"lengthMetres\": 0.179,", "\"measuredOhms\": 0.001,");
        assertEquals(List.of(), Examined.findings(harness, RULE));
        assertEquals(
                "Protection distance not checked: no length entered and no route on the way from the battery to F1.",
                Examined.findings(harness, "not-checked").get(0).message());
    }
}
