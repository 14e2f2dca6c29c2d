package org.ohmloom.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ohmloom.KillRecord;
import org.ohmloom.Victim;

/**
 * Kills a program in the middle of ten saves, again and again. Afterwards each file is what the last finished save wrote or what the
 * one under way was to write, to the byte, and its backup is the one before that.
 *
 * <p>Each kill appends a line to {@code kills.csv} in its folder; started again it goes on after the last line. The number of the
 * kill decides its moment and what is saved, so a stopped campaign continues as if it had not stopped.
 */
public final class KillRun {

    private static final long SEED = 20261130;
    private static final int FILES = 10;
    private static final int SAVES = 1000;
    private static final int LONGEST_WAIT_MILLIS = 500;

    private final Path folder;
    private final List<Path> targets;
    private final KillRecord record;
    private final SaveLoop loop = new SaveLoop();

    KillRun(Path folder) throws IOException, HarnessFileException {
        this.folder = folder;
        Path saves = Files.createDirectories(folder.resolve("saves"));
        targets = IntStream.range(0, FILES)
                .mapToObj(k -> saves.resolve("target" + k + HarnessFiles.ENDING))
                .toList();
        record = new KillRecord(
                folder.resolve("kills.csv"), "kill,waited microseconds,saves before,new files,under work");
    }

    /**
     * Runs the campaign or what is left of it.
     *
     * @param arguments folder for its files (target/kill-saves unless given), count of saves cut short (1,000 unless given)
     */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "target/kill-saves");
        KillRun run = new KillRun(folder);
        run.run((arguments.length > 1 ? Integer.parseInt(arguments[1]) : SAVES) / FILES);
        System.out.println("seed " + SEED + ": " + run.done() + " kills cut " + run.done() * FILES
                + " saves short, all files whole; kills that left 0, 1, 2, more new files: " + run.record.counts(3)
                + ", files under work: " + run.record.counts(4));
    }

    /** Kills until the record tells of so many; throws at the first file that is not whole. */
    void run(int kills) throws Exception {
        record.upTo(kills, this::kill);
    }

    int done() throws IOException {
        return record.done();
    }

    private String kill(int number) throws Exception {
        List<Before> all = new ArrayList<>();
        List<String> arguments = new ArrayList<>(List.of(String.valueOf(number)));
        for (Path target : targets) {
            if (!Files.exists(target)) {
                Files.write(target, loop.content(number, 1_000_000));
            }
            all.add(new Before(target, contentOf(backupOf(target)), contentOf(target)));
            arguments.add(target.toString());
        }
        long micros = new Random(SEED + number).nextInt(1000 * LONGEST_WAIT_MILLIS);
        List<String> said = Victim.killed(
                SaveLoop.class, folder.resolve("child.txt"), micros, List.of(), arguments.toArray(String[]::new));
        int fresh = 0;
        for (int k = 0; k < FILES; k++) {
            String name = k + " ";
            long done = said.stream().filter(line -> line.startsWith(name)).count();
            fresh += isNew(number, all.get(k), (int) done - 1) ? 1 : 0;
        }
        return number + "," + micros + "," + said.size() + "," + fresh + "," + clearedLeftovers();
    }

    /** What a file and its backup were before the saves that were cut short. */
    private record Before(Path target, byte[] backup, byte[] file) {}

    /** Whether the file has what the save under way was to write already; throws when it is neither that nor the last. */
    private boolean isNew(int kill, Before before, int last) throws IOException {
        byte[] file = contentOf(before.target());
        byte[] backup = contentOf(backupOf(before.target()));
        boolean fresh = Arrays.equals(file, content(kill, before, last + 1));
        if (!fresh && !Arrays.equals(file, content(kill, before, last))) {
            throw new AssertionError("kill " + kill + " after save " + last + " left another file: " + before.target());
        }
        if (!Arrays.equals(backup, content(kill, before, last))
                && (fresh || !Arrays.equals(backup, content(kill, before, last - 1)))) {
            throw new AssertionError(
                    "kill " + kill + " after save " + last + " left another backup: " + before.target());
        }
        return fresh;
    }

    private byte[] content(int kill, Before before, int save) {
        return save == -2 ? before.backup() : save == -1 ? before.file() : loop.content(kill, save);
    }

    /** Empty when there is none. */
    private static byte[] contentOf(Path file) throws IOException {
        return Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
    }

    private static Path backupOf(Path target) {
        return target.resolveSibling(target.getFileName() + ".bak");
    }

    /** How many files under work the kill left lying beside; they are removed. */
    private long clearedLeftovers() throws IOException {
        long count = 0;
        try (Stream<Path> files = Files.list(folder.resolve("saves"))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".tmp")).toList()) {
                Files.delete(file);
                count++;
            }
        }
        return count;
    }
}
