package org.ohmloom.workbench.desk;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.ohmloom.analysis.Cancel;

/**
 * Runs one computation at a time off the caller's thread; a later request stops an earlier one and its results alone are
 * delivered, those on the way and the last. Requests within the pause count as one. All methods belong to one thread, the one results are delivered on.
 *
 * @param <I> what is asked
 * @param <O> what comes of it
 */
public final class LatestWins<I, O> {

    private static final int IDLE_SECONDS = 20;

    private final Work<I, O> work;
    private final Duration pause;
    private final Executor delivery;
    private final Consumer<Outcome<I, O>> receiver;
    private final ScheduledExecutorService worker;
    private @Nullable AtomicBoolean running;

    /** The computation. */
    @FunctionalInterface
    public interface Work<I, O> {
        /**
         * Computes.
         *
         * @param question what is asked
         * @param cancel   asks to stop
         * @param soFar    takes what is there on the way; may be left alone
         */
        O of(I question, Cancel cancel, Consumer<O> soFar);
    }

    /**
     * What came of the latest request.
     *
     * @param question what was asked
     * @param answer   the result; empty when it failed
     * @param failure  why it failed
     * @param last     whether nothing more comes of it
     */
    public record Outcome<I, O>(I question, Optional<O> answer, Optional<Throwable> failure, boolean last) {}

    /**
     * A runner.
     *
     * @param name     name of its thread
     * @param work     the computation
     * @param pause    how long a request waits for a later one
     * @param delivery runs the receiver on the thread that owns this object
     * @param receiver takes the outcome of the latest request
     */
    public LatestWins(
            String name, Work<I, O> work, Duration pause, Executor delivery, Consumer<Outcome<I, O>> receiver) {
        this.work = work;
        this.pause = pause;
        this.delivery = delivery;
        this.receiver = receiver;
        ScheduledThreadPoolExecutor one = new ScheduledThreadPoolExecutor(1, task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            return thread;
        });
        // The threads of a window that is closed go with it.
        one.setKeepAliveTime(IDLE_SECONDS, TimeUnit.SECONDS);
        one.allowCoreThreadTimeOut(true);
        this.worker = one;
    }

    /** Asks; whatever was asked before is stopped and will not be delivered. */
    public void ask(I question) {
        stop();
        AtomicBoolean cancelled = new AtomicBoolean();
        running = cancelled;
        worker.schedule(() -> run(question, cancelled), pause.toMillis(), TimeUnit.MILLISECONDS);
    }

    /** Stops what is under way; nothing will be delivered. */
    public void stop() {
        if (running != null) {
            running.set(true);
            running = null;
        }
    }

    /** Whether something asked has not been delivered yet. */
    public boolean isBusy() {
        return running != null;
    }

    private void run(I question, AtomicBoolean cancelled) {
        if (cancelled.get()) {
            return;
        }
        deliver(outcome(question, cancelled), cancelled);
    }

    private void deliver(Outcome<I, O> outcome, AtomicBoolean cancelled) {
        delivery.execute(() -> {
            if (!cancelled.get()) {
                if (outcome.last()) {
                    stop();
                }
                receiver.accept(outcome);
            }
        });
    }

    private Outcome<I, O> outcome(I question, AtomicBoolean cancelled) {
        Consumer<O> soFar =
                answer -> deliver(new Outcome<>(question, Optional.of(answer), Optional.empty(), false), cancelled);
        try {
            return new Outcome<>(
                    question, Optional.of(work.of(question, cancelled::get, soFar)), Optional.empty(), true);
        } catch (CancellationException stopped) {
            return new Outcome<>(question, Optional.empty(), Optional.of(stopped), true);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError failed) {
            return new Outcome<>(question, Optional.empty(), Optional.of(failed), true);
        }
    }
}
