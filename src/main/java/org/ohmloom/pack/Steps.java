package org.ohmloom.pack;

import java.util.concurrent.CancellationException;
import org.ohmloom.words.Text;

/** Counts the steps of making a pack, and stops it when that is asked for. Safe to share between threads. */
final class Steps {
    private final Progress progress;
    private final int count;
    private int done;

    Steps(Progress progress, int count) {
        this.progress = progress;
        this.count = count;
    }

    boolean isCancelled() {
        return progress.isCancelled();
    }

    /**
     * Begins the next step.
     *
     * @throws CancellationException when the pack is no longer wanted
     */
    synchronized void next(Text what) {
        checkpoint();
        progress.step(done++, count, what);
    }

    /** All steps are done but that. */
    synchronized void last(Text what) {
        progress.step(count, count, what);
    }

    /**
     * Goes on, or not.
     *
     * @throws CancellationException when the pack is no longer wanted
     */
    void checkpoint() {
        if (progress.isCancelled()) {
            throw new CancellationException("build pack cancelled");
        }
    }
}
