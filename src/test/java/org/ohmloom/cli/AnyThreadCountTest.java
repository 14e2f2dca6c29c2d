package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;

/** Everything an analysis finds is the same to the last digit on one thread, on two and on eight. */
@BesideOthers
class AnyThreadCountTest {

    private static final List<String> EXAMPLES = Campaign.FULL
            ? List.of("teaching", "star-ground", "faults", "workboat", "rescue-pickup")
            : List.of("star-ground");

    @Test
    void resultsAreTheSameToTheBitOnAnyNumberOfThreads() {
        for (String example : EXAMPLES) {
            Path file = Path.of("examples", example + ".harness.json");
            // JSON has the shortest digits that read back as the same double
            CommandRun alone = on(1, file);
            assertEquals("", alone.err());
            assertEquals(alone, on(2, file), example);
            assertEquals(alone, on(8, file), example);
        }
    }

    /** What runs beside its like runs on the threads of the pool it was begun in. */
    private static CommandRun on(int threads, Path file) {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> CommandRun.of("check", file.toString(), "--format", "json"))
                    .join();
        } finally {
            pool.shutdown();
        }
    }
}
