package org.ohmloom.workbench.study;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.tolerance.TolerancePlan;
import org.ohmloom.analysis.tolerance.ToleranceResult;
import org.ohmloom.analysis.tolerance.ToleranceStudy;
import org.ohmloom.workbench.desk.LatestWins;
import org.ohmloom.workbench.words.Words;

/**
 * The study of tolerances asked for last, off the event thread, and what came of the one before. Belongs to the event thread.
 */
final class ToleranceDraws {

    private final LatestWins<Asked, Came> drawing;
    private final Runnable told;
    private Optional<Drawn> latest = Optional.empty();
    private int doneCount;
    private String problem = "";

    private record Asked(Analysis analysis, TolerancePlan plan) {}

    /** What is there: on the way a count of runs, in the end the result. */
    private record Came(int doneCount, Optional<ToleranceResult> result) {}

    /**
     * What came of some results.
     *
     * @param analysis the results
     * @param result   what became of them
     */
    record Drawn(Analysis analysis, ToleranceResult result) {}

    /**
     * Nothing yet.
     *
     * @param eventThread runs a task on the event thread
     * @param told        called after every change
     */
    ToleranceDraws(Executor eventThread, Runnable told) {
        this.told = told;
        drawing = new LatestWins<>(
                "tolerance",
                (asked, cancel, soFar) -> new Came(
                        0,
                        Optional.of(ToleranceStudy.of(
                                asked.analysis(),
                                asked.plan(),
                                cancel,
                                done -> soFar.accept(new Came(done, Optional.empty()))))),
                Duration.ZERO,
                eventThread,
                this::receive);
    }

    /** Begins; what was asked before is stopped. */
    void draw(Analysis analysis, TolerancePlan plan) {
        doneCount = 0;
        problem = "";
        drawing.ask(new Asked(analysis, plan));
        told.run();
    }

    /** Stops what is under way; the results before stay. */
    void stop() {
        drawing.stop();
        told.run();
    }

    /** Stops and forgets. */
    void clear() {
        latest = Optional.empty();
        problem = "";
        stop();
    }

    private void receive(LatestWins.Outcome<Asked, Came> outcome) {
        Optional<ToleranceResult> result = outcome.answer().flatMap(Came::result);
        outcome.answer().ifPresent(came -> doneCount = Math.max(doneCount, came.doneCount()));
        result.ifPresent(
                each -> latest = Optional.of(new Drawn(outcome.question().analysis(), each)));
        problem = outcome.failure().map(Words::said).orElse("");
        told.run();
    }

    boolean isBusy() {
        return drawing.isBusy();
    }

    /** Runs done of the study under way. */
    int doneCount() {
        return doneCount;
    }

    /** Why the last study failed; empty when it did not. */
    String problem() {
        return problem;
    }

    Optional<Drawn> latest() {
        return latest;
    }
}
