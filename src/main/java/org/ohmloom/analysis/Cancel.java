package org.ohmloom.analysis;

import java.util.concurrent.CancellationException;

/** Asks a running analysis to stop. */
@FunctionalInterface
public interface Cancel {

    /** Never asks to stop. */
    Cancel NEVER = () -> false;

    /** Whether the caller no longer wants the result. */
    boolean isRequested();

    /**
     * Stops here when the caller no longer wants the result.
     *
     * @throws CancellationException when asked to stop
     */
    default void check() {
        if (isRequested()) {
            throw new CancellationException("analysis cancelled");
        }
    }
}
