package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ReadingId;
import org.ohmloom.store.HarnessFiles;

/** From the test sheet of the pack over the bench into the record: the sheet's own tables, filled in, are taken back. */
@BesideOthers
class RecordCommandTest {
    private static final String TEACHING =
            Path.of("examples", "teaching.harness.json").toString();

    @TempDir
    Path folder;

    /** The table of that name of the teaching example's test sheet, its blank before "By, date" filled in line by line. */
    private Path filled(String table, String... values) throws Exception {
        Path sheets = folder.resolve("pack");
        if (!Files.exists(sheets)) {
            CommandRun.of("pack", TEACHING, "--out", sheets.toString(), "--documents", "test-sheet");
        }
        Path empty;
        try (var files = Files.list(sheets)) {
            empty = files.filter(file -> file.getFileName().toString().endsWith("test-sheet-" + table + ".csv"))
                    .findFirst()
                    .orElseThrow();
        }
        List<String> lines = new ArrayList<>(Files.readAllLines(empty));
        for (int k = 0; k < values.length && k + 1 < lines.size(); k++) {
            // Blank, "By, date" and the four columns of the record stand at the end of every line.
            String line = lines.get(k + 1);
            assertTrue(line.endsWith(",,,,,,"), line);
            lines.set(k + 1, line.substring(0, line.length() - 6) + "," + values[k] + ",AB 2026-02-03,,,,");
        }
        Path file = folder.resolve(table + ".csv");
        Files.write(file, lines);
        return file;
    }

    @Test
    void theSheetsOwnTablesFilledInAreTakenAndJudged() throws Exception {
        Path copy = folder.resolve("built.harness.json");
        CommandRun run = CommandRun.of(
                "record",
                TEACHING,
                "--values",
                filled("continuity", "1.5", "900").toString(),
                "--values",
                filled("isolation", "> 200", "250").toString(),
                "--serial",
                "0001",
                "--temperature",
                "22",
                "--out",
                copy.toString());

        assertTrue(run.out().contains("AS-BUILT RECORD (4 readings: 3 passed, 1 failed, 0 not judged)"), run::out);
        assertTrue(run.out().contains("continuity.csv: 2 readings taken"), run::out);
        assertFalse(run.out().contains("columns left out"), run::out);
        Harness built = HarnessFiles.read(copy);
        assertEquals(4, built.readings().size());
        assertEquals(
                22.0,
                built.readings().get(new ReadingId("BR1")).conductorCelsius().orElseThrow());
        CommandRun json = CommandRun.of("check", copy.toString(), "--format", "json");
        assertTrue(json.out().contains("\"verdict\": \"FAILED\""), json::out);
        assertTrue(json.out().contains("\"rule\": \"reading-beyond-limit\""), json::out);
    }

    @Test
    void aSlipIsToldByLineAndNothingIsWritten() throws Exception {
        Path copy = folder.resolve("built.harness.json");
        CommandRun run = CommandRun.of(
                "record", TEACHING, "--values", filled("continuity", "abc", "x").toString(), "--out", copy.toString());

        assertEquals(2, run.status());
        assertEquals(2, run.err().lines().count(), run::err);
        assertTrue(run.err()
                .lines()
                .allMatch(line -> line.startsWith("ohmloom: ") && line.contains("continuity.csv, line ")));
        assertFalse(Files.exists(copy));
        CommandRun same = CommandRun.of("record", TEACHING, "--values", folder.toString(), "--out", TEACHING);
        assertEquals(2, same.status());
        assertTrue(same.err().contains("give another name to --out"), same::err);
    }
}
