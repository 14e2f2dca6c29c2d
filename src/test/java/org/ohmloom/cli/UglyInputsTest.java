package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.BesideOthers;

/**
 * What people really have in their files, through {@code check}, {@code size} and {@code pack}: the unfinished gets a result
 * that says what is missing, the impossible one line that names file, place and what would be right.
 */
@BesideOthers
class UglyInputsTest {

    private static final String NAME = "ugly.harness.json";
    private static final Pattern STACK_TRACE = Pattern.compile("(?m)^\\s+at [\\w.$]+\\(|Exception|^Caused by:");

    /** A coil on an output at half duty, a battery, a fuse and four wires; a shipped example of a rule, without a finding. */
    private static final String WHOLE = read("/org/ohmloom/review/examples/freewheel-missing/nearly.harness.json");

    private static final String HEAD =
            """
            "format": "ohmloom-harness", "version": 1,
            "titleBlock": {"title": "Bare", "number": "T-1", "language": "en"},
            "rules": {"basis": "road-vehicle", "nominalVolts": 12, "allowedDropFraction": 0.05,
              "gaugeSystem": "metric", "insulation": "ISO 6722-1 class B", "ambientCelsius": 30}""";

    @TempDir
    Path folder;

    private static String read(String resource) {
        try (var stream = UglyInputsTest.class.getResourceAsStream(resource)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException problem) {
            throw new AssertionError(problem);
        }
    }

    /** The whole harness with one thing changed that it surely has. */
    private static String with(String what, String instead) {
        assertTrue(WHOLE.contains(what), what);
        return WHOLE.replace(what, instead);
    }

    private List<CommandRun> runs(String text) throws IOException {
        Path file = Files.writeString(folder.resolve(NAME), text);
        return List.of(
                CommandRun.of("check", file.toString()),
                CommandRun.of("check", file.toString(), "--format", "json"),
                CommandRun.of("size", file.toString(), "--out", out("sized.harness.json")),
                CommandRun.of("size", file.toString(), "--anew", "--out", out("anew.harness.json")),
                CommandRun.of("pack", file.toString(), "--out", out("pack"), "--documents", "calculation"));
    }

    private String out(String name) {
        return folder.resolve(name).toString();
    }

    /** Every command gives a result of that status, and nothing on standard error. */
    private String result(int status, String text) throws IOException {
        List<CommandRun> runs = runs(text);
        for (CommandRun run : runs) {
            assertEquals(status, run.status(), run::err);
            assertEquals("", run.err());
            assertFalse(run.out().contains("NaN") || run.out().contains("Infinity"), run::out);
            assertFalse(STACK_TRACE.matcher(run.out()).find(), run::out);
        }
        assertTrue(Files.exists(folder.resolve("sized.harness.json")));
        assertTrue(Files.exists(folder.resolve("pack")));
        return runs.get(0).out().replaceAll("\\s+", " ");
    }

    /** Every command gives status 2, no result, and one line with the file and these words. */
    private void refused(String text, String... words) throws IOException {
        for (CommandRun run : runs(text)) {
            assertEquals(ExitStatus.UNUSABLE, run.status(), run::err);
            assertEquals("", run.out());
            assertEquals(1, run.err().lines().count(), run::err);
            assertTrue(run.err().startsWith("ohmloom: "), run::err);
            assertTrue(run.err().contains(NAME), run::err);
            assertFalse(STACK_TRACE.matcher(run.err()).find(), run::err);
            for (String word : words) {
                assertTrue(run.err().contains(word), run::err);
            }
        }
        assertFalse(Files.exists(folder.resolve("sized.harness.json")));
        assertFalse(Files.exists(folder.resolve("pack")));
    }

    @Test
    void theHarnessTheOthersAreMadeFromHasNoFinding() throws IOException {
        assertTrue(result(0, WHOLE).contains("FINDINGS: 0 errors, 0 warnings"));
    }

    @Test
    void anEmptyHarnessIsCheckedAndSaysWhatIsMissing() throws IOException {
        String out = result(0, "{" + HEAD + "}");
        assertTrue(out.contains("no operating state is entered, so nothing is computed"), out);
        assertTrue(out.contains("there is no source, so nothing flows"), out);
    }

    @Test
    void aFileCutInHalfIsRefusedWithThePlaceWhereItEnds() throws IOException {
        refused(WHOLE.substring(0, WHOLE.length() / 2), "the file ends");
    }

    @Test
    void anEmptyFileIsNoHarness() throws IOException {
        refused("", "the file is empty; a harness file holds one JSON object");
        refused("{}", "the key 'format' is missing");
    }

    @Test
    void aWireWithoutALengthIsNotJudgedByItsDropAndThatIsSaid() throws IOException {
        String out = result(0, with("\"lengthMetres\": 1,", ""));
        assertTrue(out.contains("Voltage drop not checked: no length entered and no route for W2, W3, W4"), out);
    }

    @Test
    void aLoadWithoutAReturnIsAnError() throws IOException {
        String cut = WHOLE.replaceFirst("(?s),\\s*\\{\\s*\"id\": \"W4\".*?\"return\"\\s*}", "");
        assertFalse(cut.contains("W4"));
        assertTrue(result(1, cut).contains("Load (L1) has no way back from its negative terminal to any source"));
    }

    @Test
    void twoUnlikeBatteriesSideBySideAreSolvedAndTheirWiresAreTooThin() throws IOException {
        // 24.6 V on 12.6 V through 2 x 5 mOhm and two metres of 2.5 mm2 (7.6 mOhm/m): hundreds of amperes
        String second =
                """
                ,
                    {"id": "BT2", "name": "Second", "device":
                      {"kind": "battery", "emfVolts": 24.6, "internalOhms": 0.005, "capacityAmpHours": 60}}
                  ],
                  "wires": [
                    {"id": "W8", "from": {"component": "BT2", "terminal": "+"}, "to": {"component": "BT1", "terminal": "+"},
                     "gauge": "2.5 mm2", "lengthMetres": 1, "signalClass": "feed"},
                    {"id": "W9", "from": {"component": "BT2", "terminal": "-"}, "to": {"component": "BT1", "terminal": "-"},
                     "gauge": "2.5 mm2", "lengthMetres": 1, "signalClass": "return"},
                """;
        String both = WHOLE.replaceFirst("(?s)\\s*],\\s*\"wires\": \\[", Matcher.quoteReplacement(second));
        String out = result(1, both);
        assertTrue(out.contains("ERROR W8"), out);
    }

    @Test
    void twoSourcesWithoutResistanceAreRefusedByTheFirst() throws IOException {
        refused(
                with("\"internalOhms\": 0.005", "\"internalOhms\": 0"),
                "(BT1).device.internalOhms",
                "must be greater than 0");
    }

    @ParameterizedTest
    @CsvSource({"-0.5", "0.0", "1.5"})
    void aDutyIsMoreThanZeroAndAtMostOne(String duty) throws IOException {
        refused(
                with("\"Q1\": 0.5", "\"Q1\": " + duty),
                "(on).components.Q1: a duty is more than 0 and at most 1, found " + duty);
    }

    @Test
    void anUnknownBatteryTypeGetsTheNearest() throws IOException {
        refused(
                with("\"capacityAmpHours\": 60", "\"capacityAmpHours\": 60, \"model\": {\"type\": \"lead-acid-amg\"}"),
                "(BT1).device.model.type: the tables have no battery type 'lead-acid-amg'; did you mean 'lead-acid-agm'?");
    }

    @Test
    void aSequenceThatNamesAMissingStateGetsTheNearest() throws IOException {
        refused(
                with(
                        "\"notes\": [",
                        "\"sequences\": [{\"id\": \"s\", \"name\": \"S\", \"steps\":"
                                + " [{\"state\": \"onn\", \"durationSeconds\": 60}]}], \"notes\": ["),
                "$.sequences[0] (s).steps[0].state: no operating state 'onn'; did you mean 'on'?");
    }

    @Test
    void aLoadGroupThatNamesAMissingLoadGetsTheNearest() throws IOException {
        refused(
                with(
                        "\"notes\": [",
                        "\"loadGroups\": [{\"id\": \"g\", \"name\": \"G\", \"kind\": \"exclusive\","
                                + " \"members\": [\"L1\", \"L9\"]}], \"notes\": ["),
                "(g).members: no component 'L9'");
    }

    @Test
    void aFuseSeriesWithoutATableIsJudgedByItsRatingAlone() throws IOException {
        assertTrue(result(0, with("ISO 8820-3 type C", "no such series"))
                .contains("Opening not judged, only the rating: no opening times are published for F1"));
    }

    @Test
    void aLoadThatAsksForTooMuchStillGivesNumbers() throws IOException {
        assertTrue(result(1, with("\"ratedAmps\": 3,", "\"ratedAmps\": 1000000000,"))
                .contains("is asked on in 'On' but gets"));
    }
}
