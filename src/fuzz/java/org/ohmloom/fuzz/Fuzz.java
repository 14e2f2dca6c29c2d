package org.ohmloom.fuzz;

import com.code_intelligence.jazzer.Jazzer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Runs one target for some seconds from what is known to reach far; goes on where it stopped, for what reached further is kept in
 * {@code target/fuzz}, and what broke something beside it.
 */
public final class Fuzz {

    /** Where a target begins. */
    private static final Map<String, String> SEEDS = Map.of(
            "HarnessFile", "src/main/resources/org/ohmloom/review/examples",
            "UnitSheet", "src/main/resources/org/ohmloom/signal/unit",
            "OwnTable", "wire-tables");

    private Fuzz() {}

    /**
     * Runs it.
     *
     * @param arguments the target without the ending, as {@code HarnessFile}, and for how many seconds
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        String target = arguments[0];
        Path kept = Files.createDirectories(Path.of("target", "fuzz", target));
        List<String> asked = new ArrayList<>(List.of(
                "--target_class=" + Fuzz.class.getPackageName() + "." + target + "Fuzz",
                "--instrumentation_includes=org.ohmloom.**",
                "--keep_going=20",
                "-max_total_time=" + arguments[1],
                "-max_len=12000",
                "-timeout=90",
                "--reproducer_path=target/fuzz",
                "-artifact_prefix=" + kept + "-",
                kept.toString()));
        if (SEEDS.containsKey(target)) {
            asked.add(SEEDS.get(target));
        }
        Jazzer.main(asked.toArray(String[]::new));
    }
}
