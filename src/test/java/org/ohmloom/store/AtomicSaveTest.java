package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.BesideOthers;

/** Whatever step of a save fails, the old file is there and whole, and nothing is left lying about. */
@BesideOthers
class AtomicSaveTest {
    private static final byte[] OLD = "old content".getBytes(StandardCharsets.UTF_8);
    private static final byte[] NEW = "the new content, longer".getBytes(StandardCharsets.UTF_8);

    @TempDir
    private Path folder;

    private Path target;

    @BeforeEach
    void anOldFile() throws IOException {
        target = Files.write(folder.resolve("a.harness.json"), OLD);
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void theOldFileIsKeptBesideTheNew(boolean movesInOneStep) throws Exception {
        FileStamp stamp = new AtomicSave(new FailingDisk(-1, movesInOneStep)).save(target, NEW, Optional.empty());
        assertArrayEquals(NEW, Files.readAllBytes(target));
        assertArrayEquals(OLD, Files.readAllBytes(folder.resolve("a.harness.json.bak")));
        assertEquals(List.of("a.harness.json", "a.harness.json.bak"), names());
        assertEquals(NEW.length, stamp.sizeBytes());
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void everyStepMayFail(boolean movesInOneStep) throws Exception {
        FailingDisk whole = new FailingDisk(-1, movesInOneStep);
        new AtomicSave(whole).save(target, NEW, Optional.empty());
        assertEquals(4, whole.steps(), "new file, backup, its move, the move");
        for (int step = 0; step < 4; step++) {
            Files.write(target, OLD);
            AtomicSave save = new AtomicSave(new FailingDisk(step, movesInOneStep));
            HarnessFileException failed =
                    assertThrows(HarnessFileException.class, () -> save.save(target, NEW, Optional.empty()));
            assertArrayEquals(OLD, Files.readAllBytes(target), "after step " + step);
            assertTrue(failed.getMessage().startsWith(target + ": not saved, what was on disk is unchanged: "));
            assertTrue(names().stream().noneMatch(name -> name.endsWith(".tmp")), names().toString());
        }
    }

    @Test
    void aNewFileThatCannotBeWrittenIsNotThereAtAll() throws Exception {
        Path fresh = folder.resolve("b.harness.json");
        for (int step = 0; step < 2; step++) {
            AtomicSave save = new AtomicSave(new FailingDisk(step, true));
            assertThrows(HarnessFileException.class, () -> save.save(fresh, NEW, Optional.empty()));
            assertEquals(List.of("a.harness.json"), names());
        }
    }

    @Test
    void aFileLeftBehindByACrashIsNotInTheWay() throws Exception {
        Files.write(folder.resolve(".a.harness.json.0.tmp"), OLD);
        new AtomicSave(new Disk()).save(target, NEW, Optional.empty());
        assertArrayEquals(NEW, Files.readAllBytes(target));
    }

    @Test
    void whatCrashesLeftLongAgoGoesWithTheNextSaveAndNothingElse() throws Exception {
        FileTime longAgo = FileTime.from(Instant.now().minus(Duration.ofHours(2)));
        for (String left : List.of(".a.harness.json.0.tmp", ".a.harness.json.2.tmp", ".a.harness.json.bak.0.tmp")) {
            Files.setLastModifiedTime(Files.write(folder.resolve(left), OLD), longAgo);
        }
        List<String> staying = List.of(
                // as young as a save under work
                ".a.harness.json.1.tmp",
                // not ours, or of another harness
                ".a.harness.json.x.tmp",
                ".b.harness.json.0.tmp",
                "a.harness.json.0.tmp");
        for (String name : staying) {
            Path file = Files.write(folder.resolve(name), OLD);
            if (!name.equals(staying.get(0))) {
                Files.setLastModifiedTime(file, longAgo);
            }
        }
        new AtomicSave(new Disk()).save(target, NEW, Optional.empty());
        assertArrayEquals(NEW, Files.readAllBytes(target));
        Set<String> expected = new TreeSet<>(staying);
        expected.addAll(List.of("a.harness.json", "a.harness.json.bak"));
        assertEquals(expected, new TreeSet<>(names()));
    }

    @Test
    void aFolderOrALinkOfTheNameOfALeftoverStays() throws Exception {
        FileTime longAgo = FileTime.from(Instant.now().minus(Duration.ofHours(2)));
        Files.setLastModifiedTime(Files.createDirectory(folder.resolve(".a.harness.json.0.tmp")), longAgo);
        Files.createSymbolicLink(folder.resolve(".a.harness.json.1.tmp"), target);
        new AtomicSave(new Disk()).save(target, NEW, Optional.empty());
        assertTrue(names().containsAll(List.of(".a.harness.json.0.tmp", ".a.harness.json.1.tmp")), names()::toString);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void whatAnotherSavesAtTheSameMomentIsNotReplaced(boolean thereBefore) throws Exception {
        byte[] others = "what another saved".getBytes(StandardCharsets.UTF_8);
        if (!thereBefore) {
            Files.delete(target);
        }
        Disk busy = new Disk() {
            @Override
            void create(Path file, byte[] content) throws IOException {
                super.create(file, content);
                Files.write(target, others);
            }
        };
        assertThrows(FileChangedException.class, () -> new AtomicSave(busy).save(target, NEW, Optional.empty()));
        assertArrayEquals(others, Files.readAllBytes(target));
        assertTrue(names().stream().noneMatch(name -> name.endsWith(".tmp")), names().toString());
    }

    @Test
    void savingTheSameContentAgainKeepsTheOlderBackup() throws Exception {
        new AtomicSave(new Disk()).save(target, NEW, Optional.empty());
        new AtomicSave(new Disk()).save(target, NEW, Optional.empty());
        assertArrayEquals(OLD, Files.readAllBytes(folder.resolve("a.harness.json.bak")));
    }
}
