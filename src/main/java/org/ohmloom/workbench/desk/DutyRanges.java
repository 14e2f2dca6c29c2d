package org.ohmloom.workbench.desk;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.DutyStep;
import org.ohmloom.analysis.DutySweep;

/**
 * The loads of the latest results run over the range of their duties. That takes some solutions more, so it is begun when
 * somebody looks, off the event thread, and kept until it is there for newer results. Belongs to the event thread.
 */
public final class DutyRanges {

    private final LatestWins<Analysis, List<DutyStep>> sweeper;
    private Optional<Analysis> asked = Optional.empty();
    private Optional<Swept> latest = Optional.empty();

    /**
     * What came of some results.
     *
     * @param analysis the results
     * @param steps    their loads run over the range of their duties
     */
    public record Swept(Analysis analysis, List<DutyStep> steps) {}

    /**
     * Nothing yet.
     *
     * @param eventThread runs a task on the event thread
     * @param arrived     called when steps have arrived
     */
    DutyRanges(Executor eventThread, Runnable arrived) {
        this.sweeper = new LatestWins<>(
                "duty range",
                (results, cancel, soFar) -> DutySweep.of(results, cancel),
                Duration.ZERO,
                eventThread,
                outcome -> {
                    latest = Optional.of(
                            new Swept(outcome.question(), outcome.answer().orElse(List.of())));
                    arrived.run();
                });
    }

    /** The latest steps there are, maybe of earlier results. */
    Optional<Swept> latest() {
        return latest;
    }

    /** Begins with these results unless it has. */
    void want(Analysis results) {
        if (asked.filter(known -> known == results).isEmpty()) {
            stop();
            asked = Optional.of(results);
            sweeper.ask(results);
        }
    }

    /** Stops what is under way. */
    void stop() {
        sweeper.stop();
        asked = asked.filter(
                results -> latest.filter(swept -> swept.analysis() == results).isPresent());
    }

    /** Stops and forgets what there is. */
    void clear() {
        stop();
        asked = Optional.empty();
        latest = Optional.empty();
    }
}
