package org.ohmloom.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.Victim;
import org.ohmloom.edit.SetWireLength;
import org.ohmloom.model.Harness;

/** Saves into several files at once, each time something else, until it is killed; says of each save that it is done. */
final class SaveLoop {

    /** Saves elsewhere first, so that most of the time after it goes to the disk and not to a cold start. */
    private static final int PRACTICE = 10;

    // a large one and a small one, so that half of one cannot pass for the other
    private final List<Harness> turns = List.of(
            HarnessFiles.read(Path.of("examples", "rescue-pickup.harness.json")),
            HarnessFiles.read(Path.of("examples", "teaching.harness.json")));

    SaveLoop() throws HarnessFileException {}

    /** What is saved: no two of a run are alike. */
    Harness harness(int kill, int save) {
        Harness turn = turns.get(save % 2);
        double metres = 1 + kill / 1000.0 + save / 10_000_000.0;
        return new SetWireLength(List.of(turn.wires().all().iterator().next().id()), OptionalDouble.of(metres))
                .apply(turn);
    }

    byte[] bytes(int kill, int save) {
        return HarnessText.write(harness(kill, save)).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Never returns by itself.
     *
     * @param arguments the number of the kill, and the files to save into
     */
    public static void main(String[] arguments) throws Exception {
        SaveLoop loop = new SaveLoop();
        int kill = Integer.parseInt(arguments[0]);
        List<Thread> threads = new ArrayList<>();
        for (int k = 1; k < arguments.length; k++) {
            Path target = Path.of(arguments[k]);
            String name = String.valueOf(k - 1);
            threads.add(new Thread(() -> loop.save(kill, target, name)));
        }
        Path practice = Path.of(arguments[1]).resolveSibling("practice.harness.json");
        for (int k = 0; k < PRACTICE; k++) {
            HarnessFiles.write(practice, loop.harness(kill, k));
        }
        Victim.ready();
        threads.forEach(Thread::start);
    }

    private void save(int kill, Path target, String name) {
        try {
            for (int save = 0; Files.isDirectory(target.getParent()); save++) {
                HarnessFiles.write(target, harness(kill, save));
                Victim.say(name + " " + save);
            }
        } catch (Exception failed) {
            failed.printStackTrace();
            Runtime.getRuntime().halt(1);
        }
    }
}
