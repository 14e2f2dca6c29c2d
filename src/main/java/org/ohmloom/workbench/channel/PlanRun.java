package org.ohmloom.workbench.channel;

import java.time.Duration;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.pins.Preferences;
import org.ohmloom.signal.unit.ChannelPlan;
import org.ohmloom.workbench.desk.LatestWins;

/** Plans pins on a thread of its own; a later question, or a person, stops an earlier one. */
final class PlanRun {

    /**
     * What is asked.
     *
     * @param harness     the harness
     * @param without     what is to get no pin
     * @param preferences what costs how much
     */
    record Question(Harness harness, Set<ComponentId> without, Preferences preferences) {}

    private final LatestWins<Question, ChannelPlan> runner;

    /** Nothing asked yet; the receiver runs on the event thread. */
    PlanRun(Executor eventThread, Consumer<LatestWins.Outcome<Question, ChannelPlan>> receiver) {
        runner = new LatestWins<>(
                "pins",
                (question, cancel, soFar) -> ChannelPlan.of(
                        question.harness(), question.without(), question.preferences(), cancel::isRequested),
                Duration.ZERO,
                eventThread,
                receiver);
    }

    void ask(Question question) {
        runner.ask(question);
    }

    void stop() {
        runner.stop();
    }

    boolean isBusy() {
        return runner.isBusy();
    }
}
