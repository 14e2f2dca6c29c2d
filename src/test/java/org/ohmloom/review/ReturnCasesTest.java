package org.ohmloom.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;

/** Loops of returns and returns of sensors. */
@BesideOthers
class ReturnCasesTest {

    private static final double MILLIVOLT = 0.001;

    @Test
    void aSecondStrapIsALoopOfPowerReturnsAndANote() {
        Harness harness = Altered.of(
                Examined.within("no-return-path"),
                "{\"id\": \"ST1\", \"name\": \"Cab strap\", \"from\": \"G3\", \"to\": \"G4\", \"ohms\": 0.0005}",
                "{\"id\": \"ST1\", \"name\": \"Cab strap\", \"from\": \"G3\", \"to\": \"G4\", \"ohms\": 0.0005},"
                        + " {\"id\": \"ST2\", \"name\": \"Second strap\", \"from\": \"G2\", \"to\": \"G1\", \"ohms\": 0.0005}");
        Finding finding = Examined.findings(harness).get(0);
        assertEquals(Severity.NOTE, finding.severity());
        assertEquals(List.of("CAB", "FR", "ST1", "ST2"), finding.subjects());
    }

    @Test
    void twoReturnsSideBySideAreANoteInWordsOfTheirOwn() {
        Harness harness = Altered.of(
                Examined.within("load-not-fed"),
                "      \"id\": \"W3\",",
                "      \"id\": \"W4\", \"from\": {\"component\": \"L1\", \"terminal\": \"-\"}, \"to\": {\"component\": \"BT1\","
                        + " \"terminal\": \"-\"}, \"gauge\": \"1.5 mm2\", \"lengthMetres\": 1, \"signalClass\": \"return\"},"
                        + " {\"id\": \"W3\",");
        Finding finding = Examined.findings(harness).get(0);
        assertEquals("W3, W4: two returns side by side; they share the current.", finding.message());
        assertEquals(Severity.NOTE, finding.severity());
    }

    @Test
    void returnsThatLieSideBySideOnPurposeAreNoFinding() {
        Harness harness = Altered.of(
                Examined.within("load-not-fed"),
                "      \"id\": \"W3\",",
                "      \"id\": \"W4\", \"from\": {\"component\": \"L1\", \"terminal\": \"-\"}, \"to\": {\"component\": \"BT1\","
                        + " \"terminal\": \"-\"}, \"gauge\": \"1.5 mm2\", \"lengthMetres\": 1, \"signalClass\": \"return\"},"
                        + " {\"id\": \"W3\",",
                "    \"ambientCelsius\": 30",
                "    \"ambientCelsius\": 30, \"returns\": {\"intended\": [{\"wires\": [\"W3\", \"W4\"], \"straps\": [],"
                        + " \"reason\": \"spare return\"}]}");
        assertEquals(List.of(), Examined.findings(harness));
        assertEquals(
                "spare return",
                Examined.analysis(harness)
                        .evidence()
                        .returns()
                        .loops()
                        .get(0)
                        .intended()
                        .orElseThrow());
    }

    /**
     * The unit's 0.1 A divides: W3 of 1 mm2 and 1 m back to the battery, against 10 mohm inside, W7 of 0.5 mm2 and 2 m, the joints,
     * the frame and W8: about 0.1 x 19 / (19 + 10 + 74 + 1 + 1) = 18 mA of it in the shield. A tenth of that draw leaves 1.8 mA.
     */
    @Test
    void aShieldWithLittleLoadCurrentIsANoteAndWithMoreAWarning() {
        Finding warning = Examined.findings(Examined.breaking("ground-loop"), "ground-loop")
                .get(0);
        assertEquals(Severity.WARNING, warning.severity());
        assertEquals(0.018, warning.values().get("current").canonical(), MILLIVOLT);
        Finding note = Examined.findings(
                        Altered.of(Examined.breaking("ground-loop"), "\"drawAmps\": 0.1", "\"drawAmps\": 0.01"),
                        "ground-loop")
                .get(0);
        assertEquals(Severity.NOTE, note.severity());
        assertEquals(0.0018, note.values().get("current").canonical(), MILLIVOLT / 10);
    }

    /**
     * The loop's wires W3, W7 and W8 are 1 + 2 + 0.4 m long, 10 mm above the frame. 2 pi 1000 Hz x 200 uT x 34000 mm2 = 43 mV; a
     * quarter of 1 % of 5 V = 12.5 mV is reached at 12.5 mV / (2 pi 1000 Hz x 0.034 m2) = 58.5 uT.
     */
    @Test
    void aFieldThatInducesMoreThanCouplingMayTakeIsAWarning() {
        assertEquals(Severity.WARNING, inField(2e-4).severity());
        assertEquals(
                2 * Math.PI * 1000 * 2e-4 * 3.4 * 0.01,
                inField(2e-4).values().get("induced").canonical(),
                1e-9);
        assertEquals(Severity.WARNING, inField(59e-6).severity());
        assertEquals(Severity.NOTE, inField(58e-6).severity());
    }

    private static Finding inField(double tesla) {
        Harness harness = Altered.of(
                Examined.breaking("ground-loop"),
                "\"drawAmps\": 0.1",
                "\"drawAmps\": 0.01",
                "    \"ambientCelsius\": 30",
                "    \"ambientCelsius\": 30, \"returns\": {\"fieldTesla\": " + tesla
                        + ", \"fieldHertz\": 1000, \"heightMetres\": 0.01, \"intended\": []}");
        return Examined.findings(harness, "ground-loop").get(0);
    }

    @Test
    void aSensorReturnThatClosesALoopIsAWarningAndNamesItsWire() {
        Harness harness = Altered.of(
                Examined.within("sensor-return-shared"),
                "\"from\": {\"component\": \"P1\", \"terminal\": \"-\"},\n      \"to\": {\"component\": \"BT1\", \"terminal\": \"-\"}",
                "\"from\": {\"component\": \"P1\", \"terminal\": \"-\"}, \"to\": {\"splice\": \"SP1\"}",
                "      \"id\": \"W13\",",
                "      \"id\": \"W14\", \"from\": {\"splice\": \"SP1\"}, \"to\": {\"component\": \"BT1\", \"terminal\": \"-\"},"
                        + " \"gauge\": \"2.5 mm2\", \"lengthMetres\": 1, \"signalClass\": \"return\"}, {\"id\": \"W13\",");
        Finding loop = Examined.findings(harness, "ground-loop").get(0);
        assertEquals(Severity.WARNING, loop.severity());
        assertEquals(true, loop.message().startsWith("Ground loop through signal return W10: "), loop.message());
        assertEquals(2, Examined.findings(harness, "sensor-return-shared").size());
    }

    /**
     * From B1 to SRET: W8 and the splice carry 10 mA, W10 the pump's 6 A + 10 mA on 1 m of 2.5 mm2 at about 7.6 mohm/m
     * and the 0.5 mohm joint, W3 and the inside the unit's 0.11 A the other way. About 6.01 x (7.6 + 0.5) mohm = 49 mV.
     */
    @Test
    void theSignalShiftsByTheVoltageBetweenTheSensorAndTheUnit() {
        Finding finding = Examined.findings(Examined.breaking("sensor-return-shared"), "sensor-return-shared")
                .get(0);
        assertEquals(6.01, finding.values().get("current").canonical(), 0.001);
        assertEquals(0.049, finding.values().get("shift").canonical(), 3 * MILLIVOLT);
    }

    @Test
    void aSignalWireWithoutALengthIsANoteAndAPowerWireAWarning() {
        Harness example = Examined.within("sensor-return-shared");
        String signal =
                "\"to\": {\"component\": \"U1\", \"terminal\": \"A1\"},\n      \"gauge\": \"0.5 mm2\",\n      \"lengthMetres\": 1,";
        Finding note = Examined.findings(Altered.of(example, signal, signal.replace("\"lengthMetres\": 1,", "")))
                .get(0);
        assertEquals(Severity.NOTE, note.severity());
        assertEquals("Length unknown, none entered and no route, for signal wires W7.", note.message());
        assertEquals(
                Severity.WARNING,
                Examined.findings(Examined.breaking("not-checked")).get(0).severity());
    }

    @Test
    void whatTheStudiesOfTheReturnsCannotJudgeIsANoteAboutTheElementsThatMissIt() {
        assertEquals(
                List.of(
                        "[Q1] Coupling not checked: the time an edge takes (Edge in the list of outputs) is not entered for Q1."),
                notChecked(Altered.of(Examined.within("coupling-over-limit"), ", \"edgeSeconds\": 0.000005", "")));
    }

    private static List<String> notChecked(Harness harness) {
        return Examined.findings(harness, "not-checked").stream()
                .filter(finding -> finding.severity() == Severity.NOTE)
                .map(finding -> finding.subjects() + " " + finding.message())
                .toList();
    }
}
