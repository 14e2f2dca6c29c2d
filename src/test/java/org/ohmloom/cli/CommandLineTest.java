package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Cautions;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.HarnessText;

@BesideOthers
class CommandLineTest {

    private static final String STAR_GROUND = "examples/star-ground.harness.json";
    private static final String WITH_ERRORS =
            "src/main/resources/org/ohmloom/review/examples/below-minimum-volts/triggers.harness.json";
    private static final String TEACHING = "examples/teaching.harness.json";

    @TempDir
    Path folder;

    @Test
    void aHarnessWithoutErrorFindingsGivesZeroAndOneWithErrorFindingsOne() {
        assertEquals(0, CommandRun.of("check", STAR_GROUND).status());
        assertEquals(1, CommandRun.of("check", WITH_ERRORS).status());
    }

    @Test
    void theTextSaysWhatItIsAndCarriesTheCautionsOnce() {
        String out = CommandRun.of("check", TEACHING).out();
        String oneLine = out.replaceAll("\\s+", " ");
        assertEquals(1, oneLine.split(Pattern.quote(Cautions.STANDING.english()), -1).length - 1);
        assertTrue(out.contains("FINDINGS: 0 errors"), out);
    }

    @Test
    void oneStateCanBeAskedForByNameAndAWrongNameGetsTheNearest() {
        CommandRun run = CommandRun.of("check", TEACHING, "--state", "Heater alone", "--format", "json");
        assertTrue(run.out().contains("Heater alone"));
        assertFalse(run.out().contains("\"All off\""));
        CommandRun wrong = CommandRun.of("check", TEACHING, "--state", "Heater alnoe");
        assertEquals(2, wrong.status());
        assertEquals("ohmloom: no operating state 'Heater alnoe'; did you mean 'Heater alone'?\n", lf(wrong.err()));
    }

    @Test
    void wrongUsageIsTwoAndOneLineAndTheHint() {
        for (String[] wrong : List.of(
                new String[] {"chekc", TEACHING},
                new String[] {"check"},
                new String[] {"check", TEACHING, "--format", "xml"},
                new String[] {"size", TEACHING},
                new String[] {"pack", TEACHING},
                new String[] {"record", TEACHING, "--out", "x.harness.json"},
                new String[] {"tables", "no-such-table"},
                new String[] {"pack", TEACHING, "--out", "x", "--documents", "poem"})) {
            CommandRun run = CommandRun.of(wrong);
            assertEquals(2, run.status(), () -> String.join(" ", wrong));
            assertEquals("", run.out());
            assertTrue(run.err().startsWith("ohmloom: "), run::err);
            assertFalse(run.err().contains("\tat "), run::err);
        }
    }

    @Test
    void aFileThatIsNotThereOrCutGivesOneLineThatNamesIt() throws Exception {
        Path cut = folder.resolve("cut.harness.json");
        byte[] whole = Files.readAllBytes(Path.of(TEACHING));
        for (int length : new int[] {0, 1, 100, whole.length / 2, whole.length - 3}) {
            Files.write(cut, Arrays.copyOf(whole, length));
            for (String command : List.of("check", "size", "pack")) {
                CommandRun run = command.equals("check")
                        ? CommandRun.of("check", cut.toString())
                        : CommandRun.of(
                                command,
                                cut.toString(),
                                "--out",
                                folder.resolve("out").toString());
                assertEquals(2, run.status());
                assertEquals(1, run.err().lines().count(), run::err);
                assertTrue(run.err().contains("cut.harness.json"), run::err);
            }
            assertEquals(length, Files.size(cut));
        }
        assertFalse(Files.exists(folder.resolve("out")));
        assertEquals(2, CommandRun.of("check", "no-such-file.harness.json").status());
    }

    @Test
    void aBasisOrInsulationNobodyHasGivesOneLineWithTheNearest() throws Exception {
        Path changed = folder.resolve("basis.harness.json");
        Files.writeString(changed, Files.readString(Path.of(TEACHING)).replace("\"road-vehicle\"", "\"road-vehicel\""));
        CommandRun run = CommandRun.of("check", changed.toString());
        assertEquals(2, run.status());
        assertTrue(run.err().contains("did you mean 'road-vehicle'?"), run::err);
        assertTrue(run.err().contains("basis.harness.json"), run::err);
        assertEquals(1, run.err().lines().count(), run::err);
    }

    @Test
    void aBuildersOwnTableBesideTheFileIsReadAndAMalformedOneIsRefusedWithItsLine() throws Exception {
        Path copy = folder.resolve("own.harness.json");
        Files.copy(Path.of(TEACHING), copy);
        Path tables = Files.createDirectory(folder.resolve("wire-tables"));
        Path own = tables.resolve("own-conductors.csv");
        String head = Files.readString(Path.of("wire-tables/iso-6722-1-conductors.csv"))
                .replace("# id: iso-6722-1", "# id: own");
        Files.writeString(own, head);
        assertEquals(0, CommandRun.of("check", copy.toString()).status());
        Files.writeString(own, head.replaceFirst("(?m)^1\\.5,", "one and a half,"));
        CommandRun run = CommandRun.of("check", copy.toString());
        assertEquals(2, run.status());
        assertEquals(1, run.err().lines().count(), run::err);
        assertTrue(run.err().contains("own-conductors.csv"), run::err);
    }

    @Test
    void sizeWritesACopyThatReadsBackAndNeverTouchesTheOriginal() throws Exception {
        Harness teaching = HarnessFiles.read(Path.of(TEACHING));
        Path original = Files.writeString(
                folder.resolve("unsized.harness.json"),
                HarnessText.write(
                        new SetWireGauge(List.copyOf(teaching.wires().ids()), Optional.empty()).apply(teaching)));
        byte[] before = Files.readAllBytes(original);
        Path copy = folder.resolve("sized.harness.json");
        CommandRun run = CommandRun.of("size", original.toString(), "--out", copy.toString());
        assertTrue(run.status() <= 1, run::err);
        assertTrue(run.out().contains("CONDUCTORS"), run::out);
        assertTrue(HarnessFiles.read(copy).wires().all().stream()
                .filter(wire -> !wire.existing())
                .noneMatch(wire -> wire.gauge().isEmpty()));
        assertArrayEquals(before, Files.readAllBytes(original));
        CommandRun same = CommandRun.of("size", copy.toString(), "--out", copy.toString());
        assertEquals(2, same.status());
        assertEquals(1, same.err().lines().count());
    }

    @Test
    void packWritesEveryDocumentAlsoWhenThereAreErrorFindings() throws Exception {
        Path out = folder.resolve("pack");
        CommandRun run = CommandRun.of("pack", WITH_ERRORS, "--out", out.toString());
        assertEquals(1, run.status(), run::err);
        try (Stream<Path> files = Files.list(out)) {
            List<String> names =
                    files.map(path -> path.getFileName().toString()).sorted().toList();
            for (String document :
                    List.of("drawing", "pin-tables", "bill-of-materials", "wire-list", "bundles", "calculation")) {
                assertTrue(names.stream().anyMatch(name -> name.endsWith(document + ".pdf")), names::toString);
            }
        }
    }

    @Test
    void sizeSaysThatItsFileIsMissingAlsoWhenTheCopyIsThereAlready() throws Exception {
        Path copy = Files.writeString(folder.resolve("copy.harness.json"), "kept");
        CommandRun run = CommandRun.of("size", "no-such-file.harness.json", "--out", copy.toString());
        assertEquals(2, run.status());
        assertEquals("ohmloom: no-such-file.harness.json: there is no such file\n", lf(run.err()));
        assertEquals("kept", Files.readString(copy));
    }

    @Test
    void theTablesAreListedWithSourcesAndOneIsPrinted() {
        CommandRun list = CommandRun.of("tables");
        assertEquals(0, list.status());
        assertTrue(list.out().contains("ac-43-13-1b-table-11-9"), list::out);
        CommandRun one = CommandRun.of("tables", "ac-43-13-1b-table-11-9");
        assertEquals(0, one.status());
        assertTrue(one.out().contains("FAA AC 43.13-1B"), one::out);
        assertTrue(one.out().contains("3.06"), one::out);
    }

    private static String lf(String text) {
        return text.replace("\r\n", "\n");
    }
}
