package org.ohmloom.workbench.desk;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;

/**
 * A calculation shared by all windows: while the results of a harness are being worked out, whoever asks for the same gets those,
 * what is there already at once; whole results are known as long as somebody shows them. It is stopped when nobody wants it any
 * more. Safe on any thread.
 */
public final class SharedCalculation implements Calculation {

    /** How often somebody who waits looks whether the result is still wanted, ms. */
    private static final long LOOK_MILLIS = 20;

    private final Calculation calculation;
    private final Executor workers;
    private final List<Run> runs = new ArrayList<>();
    private final List<Known> known = new ArrayList<>();

    /** Whole results that somebody may still hold. */
    private record Known(Question question, WeakReference<Analysis> results) {}

    /**
     * Shares a calculation.
     *
     * @param workers runs it, several at the same time
     */
    public SharedCalculation(Calculation calculation, Executor workers) {
        this.calculation = calculation;
        this.workers = workers;
    }

    @Override
    public Analysis of(Question question, Cancel cancel, Consumer<Analysis> soFar) {
        Optional<Analysis> there = question.anew() ? Optional.empty() : known(question);
        if (there.isPresent()) {
            return there.get();
        }
        Run run = join(question, cancel);
        try {
            return run.await(cancel, soFar);
        } finally {
            leave(run, cancel);
        }
    }

    private Optional<Analysis> known(Question question) {
        synchronized (runs) {
            known.removeIf(each -> each.results().get() == null);
            return known.stream()
                    .filter(each -> isSame(each.question(), question))
                    .flatMap(each -> Optional.ofNullable(each.results().get()).stream())
                    .findFirst();
        }
    }

    /** Whether it is about the very same harness: records that say the same are not enough for results to be told by. */
    private static boolean isSame(Question one, Question other) {
        return one.harness() == other.harness() && one.file().equals(other.file());
    }

    private void keep(Run run) {
        run.whole().ifPresent(whole -> {
            synchronized (runs) {
                known.removeIf(each -> isSame(each.question(), run.question));
                known.add(new Known(run.question, new WeakReference<>(whole)));
            }
        });
    }

    private Run join(Question question, Cancel cancel) {
        Run joined;
        boolean begins;
        synchronized (runs) {
            Optional<Run> running = runs.stream()
                    .filter(run -> !question.anew() && isSame(run.question, question))
                    .findFirst();
            joined = running.orElseGet(() -> new Run(question));
            begins = running.isEmpty();
            if (begins) {
                runs.add(joined);
            }
            joined.wanted.add(cancel);
        }
        if (begins) {
            workers.execute(() -> work(joined));
        }
        return joined;
    }

    private void leave(Run run, Cancel cancel) {
        synchronized (runs) {
            run.wanted.remove(cancel);
        }
    }

    private void work(Run run) {
        Cancel noneWants = () -> !isWanted(run);
        try {
            run.end(calculation.of(run.question, noneWants, run::tell), null);
            keep(run);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError failed) {
            run.end(null, failed);
        } finally {
            synchronized (runs) {
                runs.remove(run);
            }
        }
    }

    /** Whether somebody still wants the result; a run nobody wants is joined by nobody any more. */
    private boolean isWanted(Run run) {
        synchronized (runs) {
            boolean wanted = run.wanted.stream().anyMatch(each -> !each.isRequested());
            if (!wanted) {
                runs.remove(run);
            }
            return wanted;
        }
    }

    /** One run, with those who want it. */
    private static final class Run {

        private final Question question;
        /** Guarded by the list of runs. */
        private final List<Cancel> wanted = new ArrayList<>();

        private Optional<Analysis> latest = Optional.empty();
        private Optional<Throwable> failure = Optional.empty();
        private boolean ended;

        Run(Question question) {
            this.question = question;
        }

        /** The results, once they are whole. */
        synchronized Optional<Analysis> whole() {
            return ended && failure.isEmpty() ? latest : Optional.empty();
        }

        synchronized void tell(Analysis soFar) {
            latest = Optional.of(soFar);
            notifyAll();
        }

        synchronized void end(@Nullable Analysis whole, @Nullable Throwable failed) {
            latest = Optional.ofNullable(whole).or(() -> latest);
            failure = Optional.ofNullable(failed);
            ended = true;
            notifyAll();
        }

        Analysis await(Cancel cancel, Consumer<Analysis> soFar) {
            Optional<Analysis> told = Optional.empty();
            while (true) {
                Optional<Analysis> now;
                synchronized (this) {
                    while (!ended && latest.orElse(null) == told.orElse(null) && !cancel.isRequested()) {
                        pause();
                    }
                    if (ended) {
                        return result();
                    }
                    now = latest;
                }
                cancel.check();
                now.ifPresent(soFar);
                told = now;
            }
        }

        private synchronized Analysis result() {
            if (failure.isPresent()) {
                if (failure.get() instanceof RuntimeException refused) {
                    throw refused;
                }
                throw (Error) failure.get();
            }
            return latest.orElseThrow();
        }

        private synchronized void pause() {
            try {
                wait(LOOK_MILLIS);
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                throw new CancellationException("interrupted");
            }
        }
    }
}
