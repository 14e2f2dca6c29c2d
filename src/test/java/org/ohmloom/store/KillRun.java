package org.ohmloom.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Kills a program while it saves, again and again: what is in the file afterwards is one of the two harnesses, whole.
 *
 * <p>A campaign program, not part of a build. Each kill appends a line to {@code kills.csv} in its folder; started again it
 * goes on after the last line. The kill number decides its moment, so a stopped run continues as if it had not stopped.
 */
final class KillRun {

    private static final long SEED = 20261125;
    private static final int KILLS = 200;
    private static final int LONGEST_WAIT_MILLIS = 120;
    private static final String HEAD = "kill,waited microseconds,file,backup,leftovers\n";

    private final Path folder;
    private final Path target;
    private final Path results;
    private final List<byte[]> wholes;
    private final List<Path> sources;

    KillRun(Path folder) throws IOException, HarnessFileException {
        this.folder = Files.createDirectories(folder);
        Path saves = Files.createDirectories(folder.resolve("saves"));
        target = saves.resolve("target.harness.json");
        results = folder.resolve("kills.csv");
        // a large one and a small one, so that half of one cannot pass for the other
        sources = List.of(Path.of("examples/rescue-pickup.harness.json"), Path.of("examples/teaching.harness.json"));
        wholes = List.of(written(sources.get(0)), written(sources.get(1)));
    }

    private static byte[] written(Path source) throws HarnessFileException {
        return HarnessText.write(HarnessFiles.read(source)).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Runs the campaign or what is left of it.
     *
     * @param arguments folder for its files (target/kill-run unless given), count of kills (200 unless given)
     */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "target/kill-run");
        new KillRun(folder).run(arguments.length > 1 ? Integer.parseInt(arguments[1]) : KILLS);
    }

    /** Kills until the results tell of so many; throws at the first file that is not whole. */
    void run(int kills) throws Exception {
        for (int number = done(); number < kills; number++) {
            String line = kill(number);
            Files.writeString(results, line + "\n", StandardOpenOption.APPEND);
            if (!line.contains(",whole,whole,") && !line.contains(",whole,none yet,")) {
                throw new AssertionError("kill " + number + " left " + line + " in " + target);
            }
        }
    }

    /** Kills that the results tell of already. */
    int done() throws IOException {
        if (!Files.exists(results)) {
            Files.writeString(results, HEAD);
        }
        try (Stream<String> lines = Files.lines(results)) {
            return (int) lines.skip(1).count();
        }
    }

    private String kill(int number) throws Exception {
        if (number == 0) {
            Files.write(target, wholes.get(1));
        }
        Path backup = target.resolveSibling(target.getFileName() + ".bak");
        boolean hadBackup = Files.exists(backup);
        long micros = new Random(SEED + number).nextInt(1000 * LONGEST_WAIT_MILLIS);
        Process child = start();
        try {
            BufferedReader said =
                    new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8));
            if (!SaveLoop.READY.equals(said.readLine())) {
                throw new AssertionError("the saving program did not start");
            }
            TimeUnit.MICROSECONDS.sleep(micros);
            if (!child.isAlive()) {
                throw new AssertionError("the saving program stopped by itself");
            }
        } finally {
            child.destroyForcibly().waitFor();
        }
        String backupState = hadBackup || Files.exists(backup) ? stateOf(backup) : "none yet";
        return number + "," + micros + "," + stateOf(target) + "," + backupState + "," + clearedLeftovers();
    }

    private Process start() throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(
                        java,
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SaveLoop.class.getName(),
                        target.toString(),
                        sources.get(0).toString(),
                        sources.get(1).toString())
                .redirectError(folder.resolve("child.txt").toFile())
                .start();
    }

    /** Whole, missing or half; whole only if it reads and is one of the two to the byte. */
    private String stateOf(Path file) throws IOException {
        if (!Files.exists(file)) {
            return "missing";
        }
        byte[] found = Files.readAllBytes(file);
        try {
            HarnessFiles.read(file);
        } catch (HarnessFileException refused) {
            return "half";
        }
        return wholes.stream().anyMatch(whole -> Arrays.equals(whole, found)) ? "whole" : "mixed";
    }

    /** How many files under work the kill left lying beside; they are removed. */
    private long clearedLeftovers() throws IOException {
        long count = 0;
        try (Stream<Path> files = Files.list(target.getParent())) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".tmp")).toList()) {
                Files.delete(file);
                count++;
            }
        }
        return count;
    }
}
