package org.ohmloom.analysis;

import java.util.concurrent.ForkJoinTask;
import java.util.function.Supplier;

/**
 * A study that runs beside others that do not depend on it, on a thread of its own where there is one.
 *
 * @param task the running study
 */
record AtOnce<R>(ForkJoinTask<R> task) {

    /** Begins a study. */
    static <R> AtOnce<R> begin(Supplier<R> study) {
        ForkJoinTask<R> task = ForkJoinTask.adapt(study::get);
        return new AtOnce<>(task.fork());
    }

    /** What it found, waiting for it; throws what it threw. */
    R result() {
        return task.join();
    }
}
