package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;

/**
 * Files made to fill the memory or to hold a program up, read by a program that may take {@value #HEAP_MEGABYTES} MB: each is refused
 * in one line. How long each took is written beside, in src/docs/measurements.md; here only a program that hangs is ended.
 */
@BesideOthers
class HostileInputTest {

    private static final int HEAP_MEGABYTES = 768;
    private static final int LARGE_MEGABYTES = Campaign.count(40, 200);
    private static final int HANGS_MINUTES = 10;
    private static final int MEGABYTE = 1024 * 1024;

    @TempDir
    Path folder;

    private final Map<String, String> refusals = new TreeMap<>();

    private void harness(String name, String start, String again, int megabytes, String refusal) throws IOException {
        large(folder.resolve(name + ".harness.json"), start, again, megabytes);
        refusals.put(name, refusal);
    }

    private static void large(Path file, String start, String again, int megabytes) throws IOException {
        String block = again.repeat(MEGABYTE / again.length());
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write(start);
            for (int k = 0; k < megabytes; k++) {
                out.write(block);
            }
        }
    }

    private void changed(String name, String what, String instead, String refusal) throws IOException {
        String teaching = Files.readString(Path.of("examples", "teaching.harness.json"));
        assertTrue(teaching.contains(what), what);
        Files.writeString(folder.resolve(name + ".harness.json"), teaching.replaceFirst(what, instead));
        refusals.put(name, refusal);
    }

    @Test
    void eachIsRefusedInOneLineWithinTheMemory() throws Exception {
        harness("a-text-of-more-than-a-harness", "{\"format\": \"", "x", LARGE_MEGABYTES, "larger than 32 MB");
        harness("a-text-of-31-megabytes", "{\"format\": \"", "x", 31, "a text is longer than");
        harness("a-key-of-31-megabytes", "{\"", "x", 31, "a key is too long");
        harness("a-number-of-31-megabytes", "{\"version\": 1", "0", 31, "longer than 100000 characters");
        harness("nested-without-end", "", "[", 31, "more than 64 deep");
        harness("empty-objects", "{\"wires\": [", "{},", 31, "values and keys; no harness needs that");
        harness("numbers", "{\"wires\": [", "1,", 31, "values and keys; no harness needs that");
        harness("texts", "{\"wires\": [", "\"\",", 31, "values and keys; no harness needs that");
        harness("spaces", "", " ", 31, "");
        harness("not-text", "", "\u0000", 31, "");
        changed("beyond-all-numbers", "\"nominalVolts\": 12", "\"nominalVolts\": 1e308", "too large to compute with");
        changed("not-a-number", "\"nominalVolts\": 12", "\"nominalVolts\": NaN", "NaN is not a number JSON knows");
        changed("twice", "\"nominalVolts\": 12", "\"nominalVolts\": 12, \"nominalVolts\": 24", "for the second time");
        Path beside = Files.createDirectories(folder.resolve("tables"));
        Files.copy(Path.of("examples", "teaching.harness.json"), beside.resolve("own.harness.json"));
        large(Files.createDirectories(beside.resolve("wire-tables")).resolve("own.csv"), "", "a,", LARGE_MEGABYTES);
        refusals.put("own", "more than 8 MB");

        Path said = folder.resolve("said.txt");
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx" + HEAP_MEGABYTES + "m",
                        "-XX:+UseSerialGC",
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Reader.class.getName(),
                        folder.toString(),
                        beside.toString())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        try {
            assertTrue(program.waitFor(HANGS_MINUTES, TimeUnit.MINUTES), () -> "it hangs: " + said);
        } finally {
            program.destroyForcibly();
        }
        List<String> lines = Files.readAllLines(said);
        assertEquals(refusals.size(), lines.size(), lines.toString());
        for (String line : lines) {
            String name = line.substring(0, line.indexOf(' '));
            assertTrue(line.contains(" 2 ohmloom: "), line);
            assertTrue(line.contains(name + ".harness.json") || line.contains("own.csv"), line);
            assertTrue(line.contains(refusals.get(name)), line);
            assertFalse(line.contains("should not have happened"), line);
            assertTrue(line.length() < 500, line);
        }
    }

    /** Checks each file, and says in a line its name, how much processor time it took, ms, the status and what was said. */
    static final class Reader {
        private Reader() {}

        public static void main(String[] folders) throws IOException {
            ThreadMXBean threads = ManagementFactory.getThreadMXBean();
            for (String folder : folders) {
                try (var files = Files.list(Path.of(folder))) {
                    for (Path file : files.filter(each -> each.toString().endsWith(".json"))
                            .sorted()
                            .toList()) {
                        long start = threads.getCurrentThreadCpuTime();
                        CommandRun run = CommandRun.of("check", file.toString());
                        long millis = TimeUnit.NANOSECONDS.toMillis(threads.getCurrentThreadCpuTime() - start);
                        String name = file.getFileName().toString().replace(".harness.json", "");
                        System.out.println(name + " " + millis + " " + run.status() + " "
                                + run.err().strip());
                    }
                }
            }
        }
    }
}
