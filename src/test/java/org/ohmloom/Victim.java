package org.ohmloom;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A program that works without end and says what it has done, to be killed at any moment of that. */
public final class Victim {

    private static final String READY = "ready";

    private Victim() {}

    /** Said by the program, before the first thing it does that a kill may cut short. */
    public static void ready() throws IOException {
        say(READY);
    }

    /** Said by the program: each line leaves it at once and whole, or not at all. */
    public static synchronized void say(String line) throws IOException {
        // Not closed: it is the program's own standard output, without the buffer of System.out.
        new FileOutputStream(FileDescriptor.out).write((line + "\n").getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Starts a program, waits until it is ready and kills it some time after that.
     *
     * @param program what has a main method
     * @param options further options of its Java
     * @return what it said but that it was ready
     */
    public static List<String> killed(
            Class<?> program, Path errors, long micros, List<String> options, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true"));
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), program.getName()));
        command.addAll(List.of(arguments));
        Process process =
                new ProcessBuilder(command).redirectError(errors.toFile()).start();
        List<String> lines = new ArrayList<>();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            try {
                for (String line = said.readLine(); !READY.equals(line); line = said.readLine()) {
                    if (line == null) {
                        throw new AssertionError("the program did not start, see " + errors);
                    }
                    lines.add(line);
                }
                TimeUnit.MICROSECONDS.sleep(micros);
                if (!process.isAlive()) {
                    throw new AssertionError("the program stopped by itself, see " + errors);
                }
            } finally {
                // Not by the process itself, which would close the pipe with it.
                process.toHandle().destroyForcibly();
            }
            // What was said before the kill is still in the pipe.
            said.lines().forEach(lines::add);
            process.waitFor();
            return lines;
        }
    }
}
