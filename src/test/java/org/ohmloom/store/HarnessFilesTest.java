package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;

/** Harness files on a real disk. */
@BesideOthers
class HarnessFilesTest {

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void theSmallExample() throws IOException {
        file = Files.writeString(folder.resolve("fan.harness.json"), SmallExample.text());
    }

    private static String problemOfReading(Path path) {
        HarnessFileException refused = assertThrows(HarnessFileException.class, () -> HarnessFiles.read(path));
        assertEquals(
                path + (refused.place().isEmpty() ? "" : ":" + refused.place()) + ": " + refused.problem(),
                refused.getMessage());
        return refused.problem();
    }

    private static Harness changed() throws HarnessFileException {
        return HarnessText.read(SmallExample.text(), Refusals.FILE).without(new WireId("W4"));
    }

    @Test
    void whatIsSavedIsReadBack() throws HarnessFileException {
        HarnessFiles.write(file, changed());
        assertEquals(changed(), HarnessFiles.read(file));
    }

    @Test
    void whatIsNotAReadableFileIsRefused() throws IOException {
        assertEquals("there is no such file", problemOfReading(folder.resolve("none.harness.json")));
        assertEquals("this is a folder; a harness file is needed", problemOfReading(folder));
        Path empty = Files.createFile(folder.resolve("empty.harness.json"));
        assertEquals("the file is empty; a harness file holds one JSON object", problemOfReading(empty));
    }

    @Test
    void whatIsNotUtf8IsRefusedWithItsLine() throws IOException {
        byte[] latin = "{\n \"title\": \"Kühler\"}".getBytes(StandardCharsets.ISO_8859_1);
        Path broken = Files.write(folder.resolve("latin.harness.json"), latin);
        HarnessFileException refused = assertThrows(HarnessFileException.class, () -> HarnessFiles.read(broken));
        assertEquals(broken + ":2: not UTF-8 text; save the file in UTF-8", refused.getMessage());
        Files.write(broken, SmallExample.text().getBytes(StandardCharsets.UTF_16));
        assertEquals("not UTF-8 text; save the file in UTF-8", problemOfReading(broken));
    }

    @Test
    void aByteOrderMarkIsSkipped() throws Exception {
        Files.writeString(file, "\uFEFF" + SmallExample.text());
        assertEquals(SmallExample.text(), HarnessText.write(HarnessFiles.read(file)));
    }

    @Test
    void lineEndsOfWindowsAreRead() throws Exception {
        Files.writeString(file, SmallExample.text().replace("\n", "\r\n"));
        assertEquals(SmallExample.text(), HarnessText.write(HarnessFiles.read(file)));
    }

    @Test
    void aFileTooLargeForAnyHarnessIsRefused() throws IOException {
        Path large = folder.resolve("large.harness.json");
        Files.write(large, new byte[HarnessFiles.LARGEST_BYTES + 1]);
        assertEquals("the file is larger than 32 MB; no harness needs that", problemOfReading(large));
    }

    @Test
    void aFileSomebodyElseChangedIsNotOverwritten() throws Exception {
        StoredHarness stored = HarnessFiles.readStored(file);
        String theirs = SmallExample.with("\"lengthMetres\": 2.4", "\"lengthMetres\": 2.5");
        Files.writeString(file, theirs);
        Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2026-02-03T10:20:30Z")));
        FileChangedException refused = assertThrows(
                FileChangedException.class, () -> HarnessFiles.write(file, changed(), Optional.of(stored.stamp())));
        assertEquals(
                file
                        + ": the file was changed on disk at 2026-02-03T10:20:30Z since it was read and was not overwritten; "
                        + "read it again or save under another name",
                refused.getMessage());
        assertEquals(theirs, Files.readString(file));
        assertEquals(stored.stamp().sizeBytes(), refused.found().sizeBytes());
    }

    @Test
    void aFileOnlyTouchedIsNotChanged() throws Exception {
        StoredHarness stored = HarnessFiles.readStored(file);
        Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2030-01-01T00:00:00Z")));
        FileStamp after = HarnessFiles.write(file, changed(), Optional.of(stored.stamp()));
        assertFalse(after.sameContent(stored.stamp()));
        HarnessFiles.write(file, stored.harness(), Optional.of(after));
        assertEquals(SmallExample.text(), Files.readString(file));
    }

    @Test
    void aLookReadsAFileOnlyWhereItsSizeOrTimeIsAnotherAndSavingComparesWhatIsInIt() throws Exception {
        FileStamp before = HarnessFiles.readStored(file).stamp();
        Files.writeString(file, SmallExample.with("\"lengthMetres\": 2.4", "\"lengthMetres\": 2.5"));
        Files.setLastModifiedTime(file, FileTime.from(before.modified().plusSeconds(1)));
        FileStamp other = HarnessFiles.stamp(file, before).orElseThrow();
        assertEquals(before.sizeBytes(), other.sizeBytes());
        assertFalse(other.sameContent(before), "another time: read");

        Files.setLastModifiedTime(file, FileTime.from(before.modified()));
        assertEquals(Optional.of(before), HarnessFiles.stamp(file, before), "same size and time: not read");
        assertThrows(FileChangedException.class, () -> HarnessFiles.write(file, changed(), Optional.of(before)));

        Files.delete(file);
        assertEquals(Optional.empty(), HarnessFiles.stamp(file, before));
    }

    @Test
    void aFileDeletedMeanwhileIsSavedAgain() throws Exception {
        StoredHarness stored = HarnessFiles.readStored(file);
        Files.delete(file);
        HarnessFiles.write(file, stored.harness(), Optional.of(stored.stamp()));
        assertEquals(SmallExample.text(), Files.readString(file));
    }

    @Test
    void aLinkStaysALinkAndTheFileBehindItIsReplaced() throws Exception {
        Path other = Files.createDirectory(folder.resolve("other"));
        Path link = Files.createSymbolicLink(other.resolve("link.harness.json"), Path.of("..", "fan.harness.json"));
        HarnessFiles.write(link, changed());
        assertTrue(Files.isSymbolicLink(link));
        assertEquals(changed(), HarnessFiles.read(file));
        assertEquals(SmallExample.text(), Files.readString(folder.resolve("fan.harness.json.bak")));
        Path dangling =
                Files.createSymbolicLink(other.resolve("new.harness.json"), Path.of("..", "later.harness.json"));
        HarnessFiles.write(dangling, changed());
        assertEquals(changed(), HarnessFiles.read(folder.resolve("later.harness.json")));
    }

    @Test
    void linksInACircleAreRefused() throws IOException {
        Path a = folder.resolve("a.harness.json");
        Path b = Files.createSymbolicLink(folder.resolve("b.harness.json"), a);
        Files.createSymbolicLink(a, b);
        HarnessFileException refused = assertThrows(HarnessFileException.class, () -> HarnessFiles.write(a, changed()));
        assertEquals("not saved, what was on disk is unchanged: its links go round in a circle", refused.problem());
        assertFalse(problemOfReading(a).isBlank());
    }

    @Test
    void aReadOnlyFileIsNotReplaced() throws Exception {
        assumeTrue(file.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        HarnessFileException refused =
                assertThrows(HarnessFileException.class, () -> HarnessFiles.write(file, changed()));
        assertEquals(file + ": not saved: the file is read-only; save under another name", refused.getMessage());
        assertEquals(SmallExample.text(), Files.readString(file));
    }

    @Test
    void permissionsStayAsTheyWere() throws Exception {
        assumeTrue(file.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r-x"));
        HarnessFiles.write(file, changed());
        assertEquals("rw-rw-r-x", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void aPlaceWhereNothingCanBeSavedIsRefused() {
        Path nowhere = folder.resolve("none").resolve("a.harness.json");
        HarnessFileException missing =
                assertThrows(HarnessFileException.class, () -> HarnessFiles.write(nowhere, changed()));
        assertEquals("not saved: there is no folder " + folder.resolve("none"), missing.problem());
        HarnessFileException isFolder =
                assertThrows(HarnessFileException.class, () -> HarnessFiles.write(folder, changed()));
        assertEquals("not saved: this is a folder; name a file in it", isFolder.problem());
    }
}
