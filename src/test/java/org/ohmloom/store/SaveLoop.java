package org.ohmloom.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.Victim;
import org.ohmloom.edit.SetWireLength;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;

/**
 * Saves into several files at once, each time something else, until it is killed; says of each save that it is done. What is saved
 * is written as text before, so that nearly all of the time goes to the disk.
 */
final class SaveLoop {

    /** Saves elsewhere first, so that a cold start is over. */
    private static final int PRACTICE = 10;

    private static final double MARK_METRES = 7.654321;

    // a large one and a small one, so that half of one cannot pass for the other
    private final List<String> turns = List.of(marked("rescue-pickup"), marked("teaching"));

    SaveLoop() throws HarnessFileException {}

    private static String marked(String example) throws HarnessFileException {
        Harness harness = HarnessFiles.read(Path.of("examples", example + HarnessFiles.ENDING));
        List<WireId> first = List.of(harness.wires().all().iterator().next().id());
        return HarnessText.write(new SetWireLength(first, OptionalDouble.of(MARK_METRES)).apply(harness));
    }

    /** What is saved: no two of a campaign are alike. */
    byte[] content(int kill, int save) {
        String metres = (1 + kill / 1000.0) + String.format(Locale.ROOT, "%06d", save) + "1";
        return turns.get(save % 2).replace(String.valueOf(MARK_METRES), metres).getBytes(StandardCharsets.UTF_8);
    }

    private void save(int kill, int save, Path target) throws HarnessFileException {
        new AtomicSave(new Disk()).save(target, content(kill, save), Optional.empty());
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
            threads.add(new Thread(() -> loop.saveOn(kill, target, name)));
        }
        Path practice = Path.of(arguments[1]).resolveSibling("practice.harness.json");
        for (int k = 0; k < PRACTICE; k++) {
            loop.save(kill, k, practice);
        }
        Victim.ready();
        threads.forEach(Thread::start);
    }

    private void saveOn(int kill, Path target, String name) {
        try {
            for (int save = 0; Files.isDirectory(target.getParent()); save++) {
                save(kill, save, target);
                Victim.say(name + " " + save);
            }
        } catch (Exception failed) {
            failed.printStackTrace();
            Runtime.getRuntime().halt(1);
        }
    }
}
