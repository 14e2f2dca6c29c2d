package org.ohmloom.analysis;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.WireTables;

/** The first stage of an analysis alone: what is there before the studies begin. */
public final class FirstNumbers {

    private FirstNumbers() {}

    /** Analyses as far as the first snapshot. */
    public static Analysis of(Harness harness) {
        return of(harness, new SolvedBefore());
    }

    /** Analyses as far as the first snapshot, begun near what is known of a harness before; leaves what is known of this one. */
    public static Analysis of(Harness harness, SolvedBefore before) {
        AtomicReference<Analysis> first = new AtomicReference<>();
        try {
            return Analyst.analyse(harness, WireTables.bundled(), () -> first.get() != null, before, soFar -> {
                first.compareAndSet(null, soFar);
                throw new CancellationException("enough");
            });
        } catch (CancellationException enough) {
            return first.get();
        }
    }
}
