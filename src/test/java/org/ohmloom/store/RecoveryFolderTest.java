package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;

/** Harnesses kept aside while they are worked on. */
@BesideOthers
class RecoveryFolderTest {

    private static final Instant FIRST = Instant.parse("2026-01-05T10:00:00Z");

    @TempDir
    private Path folder;

    private RecoveryFolder kept() {
        return new RecoveryFolder(folder.resolve("recovery"), owner -> owner.equals("running"));
    }

    private static RecoverySnapshot snapshot(String key, String owner, Optional<Path> file, Instant at) {
        return new RecoverySnapshot(key, owner, "trailer = \\ odd", file, 3, at);
    }

    private static Harness teaching() throws HarnessFileException {
        return HarnessFiles.read(Path.of("examples", "teaching.harness.json"));
    }

    private static Harness thicker(Harness harness) {
        return SetWireGauge.of(new WireId("W4"), Gauge.metric(6)).apply(harness);
    }

    @Test
    void whatIsKeptIsReadBackWholeWithWhatIsKnownAboutIt() throws Exception {
        RecoverySnapshot snapshot = snapshot("1-1", "stopped", Optional.of(Path.of("a b", "c\\d.harness.json")), FIRST);
        kept().keep(snapshot, thicker(teaching()));
        assertEquals(List.of(snapshot), kept().left());
        assertEquals(HarnessText.write(thicker(teaching())), HarnessText.write(kept().read(snapshot)));
        assertTrue(kept().sizeBytes(snapshot) > 1000);
    }

    @Test
    void whatARunningProgramKeepsIsNotOfferedAndTheLatestComesFirst() throws Exception {
        kept().keep(snapshot("1", "stopped", Optional.empty(), FIRST), teaching());
        kept().keep(snapshot("2", "running", Optional.empty(), FIRST), teaching());
        kept().keep(snapshot("3", "stopped", Optional.empty(), FIRST.plusSeconds(1)), teaching());
        assertEquals(
                List.of("3", "1"),
                kept().left().stream().map(RecoverySnapshot::key).toList());
    }

    @Test
    void onlyWhatDiffersFromItsFileIsWorthRestoring() throws Exception {
        Path file = folder.resolve("teaching.harness.json");
        HarnessFiles.write(file, teaching());
        RecoverySnapshot same = snapshot("1", "stopped", Optional.of(file), FIRST);
        RecoverySnapshot other = snapshot("2", "stopped", Optional.of(file), FIRST);
        kept().keep(same, teaching());
        kept().keep(other, thicker(teaching()));
        assertFalse(kept().differs(same));
        assertTrue(kept().differs(other));
        Files.delete(file);
        assertTrue(kept().differs(same), "the file is gone");
    }

    @Test
    void aRestoredFileIsKeptInASecondFolderAndAForgottenOneIsGone() throws Exception {
        RecoverySnapshot restored = snapshot("1", "stopped", Optional.empty(), FIRST);
        RecoverySnapshot forgotten = snapshot("2", "stopped", Optional.empty(), FIRST);
        kept().keep(restored, teaching());
        kept().keep(forgotten, teaching());
        kept().keep(forgotten, thicker(teaching()));
        Path aside = kept().setAside(restored).orElseThrow();
        kept().forget("2");
        assertEquals(List.of(), kept().left());
        assertEquals(teaching().wires(), HarnessFiles.read(aside).wires());
        try (var files = Files.list(folder.resolve("recovery"))) {
            assertEquals(
                    List.of("restored"),
                    files.map(each -> each.getFileName().toString()).toList());
        }
    }

    @Test
    void aHarnessWithoutItsNoteOrWithADamagedOneIsPassedOver() throws Exception {
        kept().keep(snapshot("1", "stopped", Optional.empty(), FIRST), teaching());
        kept().keep(snapshot("2", "stopped", Optional.empty(), FIRST), teaching());
        Files.delete(folder.resolve("recovery").resolve("1.snapshot"));
        Files.writeString(folder.resolve("recovery").resolve("2.snapshot"), "key=2\nchanges=many\n");
        assertEquals(List.of(), kept().left());
    }
}
