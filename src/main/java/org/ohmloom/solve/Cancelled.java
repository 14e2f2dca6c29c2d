package org.ohmloom.solve;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** Stops a computation nobody waits for any more. */
final class Cancelled {

    private Cancelled() {}

    /**
     * Goes on unless asked to stop.
     *
     * @throws CancellationException when asked to stop
     */
    static void check(BooleanSupplier cancelled) {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException("solution cancelled");
        }
    }
}
