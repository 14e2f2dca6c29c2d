package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;

/**
 * A real disk that is full, has no room for another name, is read-only, or lets no file grow so long: one line says so, and file and
 * backup are as they were. Skipped where the machine does not let one make such a disk; what every step of a save does on a disk
 * that fails there, and on one that cannot move in one step, is in {@link AtomicSaveTest} on any machine.
 */
@BesideOthers
class SavesOnFailingDisksTest {

    private static final int FILLING_BYTES = 4096;

    @TempDir
    private Path folder;

    private static Harness large() throws HarnessFileException {
        return HarnessFiles.read(Path.of("examples", "workboat.harness.json"));
    }

    /** A file with a backup beside it; what a refused save must leave. */
    private static Path file(Path disk) throws IOException, HarnessFileException {
        Path file = Files.writeString(disk.resolve("fan.harness.json"), "what was there first");
        HarnessFiles.write(file, HarnessText.read(SmallExample.text(), Refusals.FILE));
        return file;
    }

    private static String refused(Path file) throws IOException {
        byte[] before = Files.readAllBytes(file);
        List<String> names = Mount.names(file.getParent());
        HarnessFileException refused =
                assertThrows(HarnessFileException.class, () -> HarnessFiles.write(file, large()));
        assertArrayEquals(before, Files.readAllBytes(file));
        assertEquals("what was there first", Files.readString(file.resolveSibling("fan.harness.json.bak")));
        assertEquals(names, Mount.names(file.getParent()), "nothing is left lying about");
        return refused.problem();
    }

    @Test
    void aFullDiskLeavesFileAndBackupAndTakesTheNextSaveOnceThereIsRoom() throws Exception {
        try (Mount disk = new Mount(folder.resolve("disk"), "size=256k")) {
            Path file = file(folder.resolve("disk"));
            Path filling = fill(file.resolveSibling("filling"));
            assertEquals("not saved, what was on disk is unchanged: No space left on device", refused(file));
            Files.delete(filling);
            HarnessFiles.write(file, large());
            assertEquals(large(), HarnessFiles.read(file));
        }
    }

    private static Path fill(Path filling) throws IOException {
        try (var out = Files.newOutputStream(filling)) {
            for (int k = 0; k < 64; k++) {
                out.write(new byte[FILLING_BYTES]);
            }
            throw new AssertionError("the disk is not full");
        } catch (IOException full) {
            return filling;
        }
    }

    @Test
    void aDiskWithoutRoomForAnotherNameLeavesFileAndBackup() throws Exception {
        try (Mount disk = new Mount(folder.resolve("disk"), "nr_inodes=4")) {
            Path file = file(folder.resolve("disk"));
            Files.createFile(file.resolveSibling("other"));
            assertEquals("not saved, what was on disk is unchanged: No space left on device", refused(file));
        }
    }

    @Test
    void aReadOnlyDiskLeavesFileAndBackup() throws Exception {
        try (Mount disk = new Mount(folder.resolve("disk"), "size=1m")) {
            Path file = file(folder.resolve("disk"));
            disk.again("ro");
            assertEquals("not saved: the file is read-only; save under another name", refused(file));
            Path fresh = file.resolveSibling("fresh.harness.json");
            HarnessFileException none =
                    assertThrows(HarnessFileException.class, () -> HarnessFiles.write(fresh, large()));
            assertEquals("not saved, what was on disk is unchanged: Read-only file system", none.problem());
        }
    }

    @Test
    void aFolderThisUserMayNotWriteToLeavesFileAndBackup() throws Exception {
        Path file = file(Files.createDirectories(folder.resolve("closed")));
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Files.setPosixFilePermissions(file.getParent(), PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            assumeTrue(!Files.isWritable(file.getParent()), "this user may write everywhere");
            assertEquals("not saved: this user may not write there; save under another name", refused(file));
        } finally {
            Files.setPosixFilePermissions(file.getParent(), PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    /** A program that may write no longer files saves the large harness over the small one. */
    @Test
    void aLimitOnTheLengthOfFilesLeavesFileAndBackup() throws Exception {
        Path file = file(folder);
        byte[] before = Files.readAllBytes(file);
        Path said = folder.resolve("said.txt");
        Process program;
        try {
            program = new ProcessBuilder(
                            "sh",
                            "-c",
                            "ulimit -f 24 && exec \"$@\"",
                            "sh",
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:-UsePerfData",
                            "-XX:TieredStopAtLevel=1",
                            "-cp",
                            System.getProperty("java.class.path"),
                            LimitedSave.class.getName(),
                            file.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start();
        } catch (IOException none) {
            assumeTrue(false, "no shell here");
            return;
        }
        program.waitFor(2, TimeUnit.MINUTES);
        assertEquals(
                file + ": not saved, what was on disk is unchanged: File too large",
                Files.readString(said, StandardCharsets.UTF_8).strip());
        assertArrayEquals(before, Files.readAllBytes(file));
        assertEquals("what was there first", Files.readString(folder.resolve("fan.harness.json.bak")));
        assertEquals(List.of("fan.harness.json", "fan.harness.json.bak", "said.txt"), Mount.names(folder));
    }

    /** Saves once and says what came of it. */
    static final class LimitedSave {
        private LimitedSave() {}

        public static void main(String[] arguments) throws HarnessFileException {
            Harness large = large();
            try {
                HarnessFiles.write(Path.of(arguments[0]), large);
            } catch (HarnessFileException refused) {
                System.out.println(refused.getMessage());
            }
        }
    }
}
