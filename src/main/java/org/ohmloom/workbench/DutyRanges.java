package org.ohmloom.workbench;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.DutyStep;
import org.ohmloom.analysis.DutySweep;

/**
 * The loads of the latest results run over the range of their duties. That takes some solutions more, so it is begun when
 * somebody looks, off the event thread, and kept while the results are the same. Belongs to the event thread.
 */
final class DutyRanges {

    private final LatestWins<Analysis, List<DutyStep>> sweeper;
    private Optional<Analysis> asked = Optional.empty();
    private Optional<List<DutyStep>> steps = Optional.empty();

    /**
     * Nothing yet.
     *
     * @param eventThread runs a task on the event thread
     * @param arrived     called when steps have arrived
     */
    DutyRanges(Executor eventThread, Runnable arrived) {
        this.sweeper = new LatestWins<>("duty range", DutySweep::of, Duration.ZERO, eventThread, outcome -> {
            steps = Optional.of(outcome.answer().orElse(List.of()));
            arrived.run();
        });
    }

    /** The steps of these results, if they are there. */
    Optional<List<DutyStep>> of(Analysis results) {
        return asked.filter(known -> known == results).flatMap(known -> steps);
    }

    /** Begins with these results unless it has. */
    void want(Analysis results) {
        if (asked.filter(known -> known == results).isEmpty()) {
            stop();
            asked = Optional.of(results);
            sweeper.ask(results);
        }
    }

    /** Stops what is under way and forgets what it was about. */
    void stop() {
        sweeper.stop();
        asked = Optional.empty();
        steps = Optional.empty();
    }
}
