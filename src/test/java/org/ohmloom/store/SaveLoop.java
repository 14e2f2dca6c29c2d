package org.ohmloom.store;

import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.ohmloom.model.Harness;

/** Saves two harnesses by turns into one file until it is killed; a line on standard output says that it begins. */
final class SaveLoop {

    /** What it says before the first save. */
    static final String READY = "saving";

    /** Saves elsewhere before that, so that most of the time after it goes to the disk and not to a cold start. */
    private static final int PRACTICE = 20;

    private SaveLoop() {}

    /**
     * Never returns by itself.
     *
     * @param arguments the file to save into, and the two files to read the harnesses from
     */
    public static void main(String[] arguments) throws Exception {
        Path target = Path.of(arguments[0]);
        List<Harness> turns =
                List.of(HarnessFiles.read(Path.of(arguments[1])), HarnessFiles.read(Path.of(arguments[2])));
        Path practice = target.resolveSibling("practice.harness.json");
        for (int k = 0; k < PRACTICE; k++) {
            HarnessFiles.write(practice, turns.get(k % 2));
        }
        OutputStream out = System.out;
        out.write((READY + "\n").getBytes(StandardCharsets.UTF_8));
        out.flush();
        for (int k = 0; Files.exists(target); k++) {
            HarnessFiles.write(target, turns.get(k % 2));
        }
    }
}
