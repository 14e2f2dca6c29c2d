package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;

@BesideOthers
class CompareCommandTest {
    private static final Path TEACHING = Path.of("examples", "teaching.harness.json");

    @TempDir
    private Path folder;

    @Test
    void theChangeSheetNamesWhatChangedAndWhatToBuy() throws Exception {
        Path changed = folder.resolve("b.harness.json");
        String text = Files.readString(TEACHING);
        // W5, the feed of the pump: 1.5 m of red and green.
        String wire = "\"gauge\": \"1.5 mm2\",\n      \"colour\": \"RDGN\"";
        assertTrue(text.contains(wire));
        Files.writeString(changed, text.replace(wire, wire.replace("1.5 mm2", "2.5 mm2")));

        CommandRun run = CommandRun.of(
                "compare",
                TEACHING.toString(),
                changed.toString(),
                "--out",
                folder.resolve("out").toString());

        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("changed wire W5: size 1.5 mm² -> 2.5 mm²"), run.out());
        Path parts = folder.resolve("out").resolve("EX-D-0001-change-sheet-parts.csv");
        String bill = Files.readString(parts);
        assertTrue(bill.contains("RDGN,m,1.5,0,-1.5"), bill);
        assertTrue(bill.contains("RDGN,m,0,1.5,1.5"), bill);
        assertTrue(Files.size(folder.resolve("out").resolve("EX-D-0001-change-sheet.pdf")) > 1000);
    }

    @Test
    void twoTimesTheSameFileSaysSo() {
        CommandRun run = CommandRun.of("compare", TEACHING.toString(), TEACHING.toString(), "--out", folder.toString());

        assertEquals(0, run.status());
        assertTrue(run.out().startsWith("Both say the same."), run.out());
    }

    @Test
    void aMissingFileIsOneLineAndNothingIsWritten() {
        Path out = folder.resolve("none");

        CommandRun run = CommandRun.of("compare", TEACHING.toString(), "gone.harness.json", "--out", out.toString());

        assertEquals(2, run.status());
        assertEquals(1, run.err().lines().count(), run.err());
        assertFalse(Files.exists(out));
    }
}
