package org.ohmloom.store;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ohmloom.model.Harness;

/**
 * A folder of harnesses kept aside while they are worked on, so that little is lost when the program or the machine stops.
 * Each is a harness file {@code KEY.harness.json} and a note {@code KEY.snapshot} beside it, written after it: a harness
 * without a note is not whole yet and is not offered.
 */
public final class RecoveryFolder {

    private static final String NOTE = ".snapshot";
    private static final String RESTORED = "restored";

    private final Path folder;
    private final Predicate<String> running;

    /**
     * A folder, made when something is first kept in it.
     *
     * @param running whether the owner of a snapshot still runs; what it keeps is its own affair
     */
    public RecoveryFolder(Path folder, Predicate<String> running) {
        this.folder = folder;
        this.running = running;
    }

    /**
     * Keeps a harness, in the place of the one kept before under the same key.
     *
     * @throws HarnessFileException when it cannot be kept; what was kept before is then still there
     */
    public void keep(RecoverySnapshot snapshot, Harness harness) throws HarnessFileException {
        try {
            Files.createDirectories(folder);
        } catch (IOException failed) {
            throw new HarnessFileException(folder, DiskProblem.writing(failed));
        }
        keep(harness(snapshot.key()), HarnessText.write(harness));
        keep(note(snapshot.key()), written(snapshot));
    }

    private static void keep(Path file, String text) throws HarnessFileException {
        AtomicSave.withoutBackup(new Disk()).save(file, text.getBytes(StandardCharsets.UTF_8), Optional.empty());
    }

    /** Forgets what is kept under a key, if anything is, and what was under work when its program stopped. */
    public void forget(String key) {
        for (Path each : List.of(note(key), harness(key))) {
            delete(each);
            delete(AtomicSave.underWork(each, 0));
        }
    }

    /** What programs that no longer run have left, latest first; a damaged note is passed over. */
    public List<RecoverySnapshot> left() {
        List<RecoverySnapshot> left = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(file -> file.getFileName().toString().endsWith(NOTE)).forEach(file -> read(file)
                    .filter(snapshot -> Files.isRegularFile(harness(snapshot.key())))
                    .filter(snapshot -> !running.test(snapshot.owner()))
                    .ifPresent(left::add));
        } catch (IOException none) {
            return List.of();
        }
        left.sort(Comparator.comparing(RecoverySnapshot::at).reversed());
        return List.copyOf(left);
    }

    /**
     * The harness of a snapshot.
     *
     * @throws HarnessFileException when it cannot be read
     */
    public Harness read(RecoverySnapshot snapshot) throws HarnessFileException {
        return HarnessFiles.read(harness(snapshot.key()));
    }

    /** Size of the file of a snapshot, bytes; 0 when it is gone. */
    public long sizeBytes(RecoverySnapshot snapshot) {
        try {
            return Files.size(harness(snapshot.key()));
        } catch (IOException gone) {
            return 0;
        }
    }

    /** Whether a snapshot holds something else than the file it came from does now; true when that cannot be told. */
    public boolean differs(RecoverySnapshot snapshot) {
        if (snapshot.file().isEmpty()) {
            return true;
        }
        try {
            return !HarnessText.write(read(snapshot))
                    .equals(HarnessText.write(HarnessFiles.read(snapshot.file().orElseThrow())));
        } catch (HarnessFileException unreadable) {
            return true;
        }
    }

    /** Whether two snapshots of one run hold the same harness: it was open in two windows. False when that cannot be told. */
    public boolean isSame(RecoverySnapshot one, RecoverySnapshot other) {
        try {
            return one.owner().equals(other.owner())
                    && one.file().equals(other.file())
                    && HarnessText.write(read(one)).equals(HarnessText.write(read(other)));
        } catch (HarnessFileException unreadable) {
            return false;
        }
    }

    /**
     * Puts the file of a snapshot that was restored into a second folder and forgets the snapshot.
     *
     * @return where it lies now; empty when it could not be moved and stays among the snapshots
     */
    public Optional<Path> setAside(RecoverySnapshot snapshot) {
        try {
            Path aside =
                    Files.createDirectories(folder.resolve(RESTORED)).resolve(snapshot.key() + HarnessFiles.ENDING);
            Files.move(harness(snapshot.key()), aside, StandardCopyOption.REPLACE_EXISTING);
            forget(snapshot.key());
            return Optional.of(aside);
        } catch (IOException failed) {
            return Optional.empty();
        }
    }

    private Path harness(String key) {
        return folder.resolve(key + HarnessFiles.ENDING);
    }

    private Path note(String key) {
        return folder.resolve(key + NOTE);
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException busy) {
            // It is offered once more than needed; that is all.
        }
    }

    private static String written(RecoverySnapshot snapshot) {
        return "key=" + snapshot.key() + "\nowner=" + escaped(snapshot.owner()) + "\nname=" + escaped(snapshot.name())
                + snapshot.file()
                        .map(file -> "\nfile=" + escaped(file.toString()))
                        .orElse("")
                + "\nchanges=" + snapshot.changes() + "\nat=" + snapshot.at() + "\n";
    }

    /** A value as {@link Properties} reads it. */
    private static String escaped(String value) {
        return value.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r");
    }

    private static Optional<RecoverySnapshot> read(Path file) {
        Properties values = new Properties();
        try {
            values.load(new StringReader(Files.readString(file)));
            String from = values.getProperty("file");
            return Optional.of(new RecoverySnapshot(
                    values.getProperty("key", ""),
                    values.getProperty("owner", ""),
                    values.getProperty("name", ""),
                    from == null ? Optional.empty() : Optional.of(Path.of(from)),
                    Integer.parseInt(values.getProperty("changes", "")),
                    Instant.parse(values.getProperty("at", ""))));
        } catch (IOException | DateTimeException | IllegalArgumentException damaged) {
            return Optional.empty();
        }
    }
}
