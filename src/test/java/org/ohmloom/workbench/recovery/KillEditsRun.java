package org.ohmloom.workbench.recovery;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.ohmloom.KillRecord;
import org.ohmloom.Victim;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.RecoveryFolder;
import org.ohmloom.store.RecoverySnapshot;
import org.ohmloom.workbench.desk.Document;

/**
 * Kills a program in which five harnesses are edited as a quick hand does, again and again. Afterwards the files are as they were,
 * and what is offered has every edit that was kept. How many edits are not in it is counted: one, unless the disk was slower than
 * the hand.
 *
 * <p>Each kill appends a line to {@code kills.csv} in its folder; started again it goes on after the last line.
 */
public final class KillEditsRun {

    private static final long SEED = 20261130;
    private static final int HARNESSES = 5;
    private static final int RUNS = 300;
    private static final int LONGEST_WAIT_MILLIS = 1500;

    private final Path folder;
    private final List<Path> files;
    private final KillRecord record;
    private final byte[] content = Files.readAllBytes(Path.of("examples", "teaching.harness.json"));

    KillEditsRun(Path folder) throws IOException {
        this.folder = Files.createDirectories(folder);
        files = IntStream.range(0, HARNESSES)
                .mapToObj(k -> folder.resolve("edited" + k + ".harness.json"))
                .toList();
        for (Path file : files) {
            Files.write(file, content);
        }
        record = new KillRecord(folder.resolve("kills.csv"), "kill,waited microseconds,edits made,lack one,lack more");
    }

    /**
     * Runs the campaign or what is left of it.
     *
     * @param arguments folder for its files (target/kill-edits unless given), count of editing runs (300 unless given)
     */
    public static void main(String[] arguments) throws Exception {
        KillEditsRun run = new KillEditsRun(Path.of(arguments.length > 0 ? arguments[0] : "target/kill-edits"));
        run.run((arguments.length > 1 ? Integer.parseInt(arguments[1]) : RUNS) / HARNESSES);
        System.out.println("seed " + SEED + ": " + run.done() * HARNESSES + " editing runs ended by " + run.done()
                + " kills, no file touched; kills after which 0, 1, 2, more runs lacked one edit: "
                + run.record.counts(3)
                + ", more than one: " + run.record.counts(4));
    }

    /** Kills until the record tells of so many; throws where something kept is not offered or a file is touched. */
    void run(int kills) throws Exception {
        record.upTo(kills, this::kill);
    }

    int done() throws IOException {
        return record.done();
    }

    private String kill(int number) throws Exception {
        long micros = new Random(SEED + number).nextInt(1000 * LONGEST_WAIT_MILLIS);
        List<String> arguments = new ArrayList<>(List.of(String.valueOf(SEED + number)));
        files.forEach(file -> arguments.add(file.toString()));
        List<String> said = Victim.killed(
                AutosaveRun.class,
                folder.resolve("child.txt"),
                micros,
                List.of("-D" + RecoveryPlace.PROPERTY + "=" + folder),
                arguments.toArray(String[]::new));
        RecoveryFolder offered = new RecoveryFolder(folder.resolve("recovery"), RecoveryPlace::runs);
        int edits = 0;
        int lackOne = 0;
        int lackMore = 0;
        for (Path file : files) {
            String name = Document.nameOf(file);
            int made = last(said, "made " + name + " ");
            int kept = last(said, "kept " + name + " ");
            int recovered = recovered(offered, name);
            if (recovered < kept || recovered > made + 1 || !Arrays.equals(content, Files.readAllBytes(file))) {
                throw new AssertionError("kill " + number + " of " + file + ": edits made " + made + ", kept " + kept
                        + ", offered " + recovered);
            }
            edits += made;
            lackOne += made - recovered == 1 ? 1 : 0;
            lackMore += made - recovered > 1 ? 1 : 0;
        }
        offered.left().forEach(each -> offered.forget(each.key()));
        return number + "," + micros + "," + edits + "," + lackOne + "," + lackMore;
    }

    private static int last(List<String> said, String start) {
        return said.stream()
                .filter(line -> line.startsWith(start))
                .mapToInt(line -> Integer.parseInt(line.substring(start.length())))
                .max()
                .orElse(0);
    }

    /** The number of the last edit that is offered of a harness. */
    private static int recovered(RecoveryFolder offered, String name) throws HarnessFileException {
        for (RecoverySnapshot each : offered.left()) {
            if (each.name().equals(name)) {
                return AutosaveRun.lastEdit(offered.read(each));
            }
        }
        return 0;
    }
}
