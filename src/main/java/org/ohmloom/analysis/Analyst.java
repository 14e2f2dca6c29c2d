package org.ohmloom.analysis;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.WireTables;

/**
 * Runs the whole analysis: graph, then for each operating state solve and heat to agreement, then size, then the studies, then
 * review.
 * <p>Wires without a size get one first ({@link SizesByWire}, then {@link JointSizing}), so that their currents and drops
 * are those of the harness they will make.
 */
public final class Analyst {

    private Analyst() {}

    /**
     * Analyses one snapshot. Safe on any thread; touches nothing but its arguments.
     *
     * @param harness the snapshot
     * @param tables  published tables
     * @param cancel  asks to stop
     * @throws AnalysisRefusedException when the harness names a table entry that is not there
     * @throws CancellationException    when asked to stop
     */
    public static Analysis analyse(Harness harness, WireTables tables, Cancel cancel) {
        return new Stages(Bench.of(harness, tables, cancel)).run(Optional.empty());
    }

    /**
     * Analyses one snapshot and tells on the way what is there already: first currents, temperatures and sizes, then one study
     * after the other. What it returns is the same as without a listener.
     *
     * @param harness the snapshot
     * @param tables  published tables
     * @param cancel  asks to stop
     * @param soFar   gets a snapshot of the results after each stage but the last, one at a time, on any thread; what it has not
     *                yet is {@link Analysis#pending()}
     * @throws AnalysisRefusedException when the harness names a table entry that is not there
     * @throws CancellationException    when asked to stop
     */
    public static Analysis analyse(Harness harness, WireTables tables, Cancel cancel, Consumer<Analysis> soFar) {
        return new Stages(Bench.of(harness, tables, cancel)).run(Optional.of(soFar));
    }

    /**
     * Analyses a snapshot that differs little from the one analysed before. The first numbers come sooner, in about two
     * thirds of the time (src/docs/performance.md): each search takes its steps from where the same step ended before, and ends no less
     * exactly. Then all is worked out from the
     * beginning, so that what is returned does not depend on what was there before.
     *
     * @param harness the snapshot
     * @param tables  published tables
     * @param cancel  asks to stop
     * @param before  what the analysis before has left; gets what this one leaves
     * @param soFar   as in {@link #analyse(Harness, WireTables, Cancel, Consumer)}
     * @throws AnalysisRefusedException when the harness names a table entry that is not there
     * @throws CancellationException    when asked to stop
     */
    public static Analysis analyse(
            Harness harness, WireTables tables, Cancel cancel, SolvedBefore before, Consumer<Analysis> soFar) {
        Bench bench = Bench.of(harness, tables, cancel);
        if (before.isOf(harness.states().ids())) {
            new Stages(bench.near(before)).tellFirst(soFar);
        }
        try {
            return new Stages(bench).run(Optional.of(soFar));
        } finally {
            before.takeOver(bench.before());
        }
    }
}
