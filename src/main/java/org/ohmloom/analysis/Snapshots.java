package org.ohmloom.analysis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Rule;
import org.ohmloom.review.StudyResults;

/** What an analysis has found so far, put in by several threads; tells a listener after each change, one after the other. */
final class Snapshots {

    private final Bench bench;
    private final Protection protection;
    private final Optional<Consumer<Analysis>> listener;
    /** What rules found that need nothing more; they are not asked again for each study that arrives. */
    private final Map<Rule, List<Finding>> known = new HashMap<>();

    private Core core;
    private Evidence evidence;

    Snapshots(Bench bench, Protection protection, Core core, Optional<Consumer<Analysis>> listener) {
        this.bench = bench;
        this.protection = protection;
        this.listener = listener;
        this.core = core;
        this.evidence = core.evidence(bench, protection, StudyResults.AWAITED);
        tell();
    }

    /** Puts in other sizes, and what the studies found by now. */
    synchronized void settle(Core changed, UnaryOperator<StudyResults> found) {
        core = changed;
        known.clear();
        evidence = changed.evidence(bench, protection, found.apply(evidence.studies()));
        tell();
    }

    /** Puts in what a study found; ratings of devices are chosen anew when it is how things start. */
    synchronized void found(UnaryOperator<StudyResults> found) {
        StudyResults studies = found.apply(evidence.studies());
        if (studies.startUps() != evidence.studies().startUps()
                || !evidence.studies().pending().containsAll(studies.pending())) {
            known.clear();
        }
        evidence = studies.startUps() == evidence.studies().startUps()
                ? evidence.with(studies)
                : core.evidence(bench, protection, studies);
        tell();
    }

    /** All that is found by now, reviewed; what is whole is reviewed from the beginning, listener or not. */
    synchronized Analysis now() {
        if (evidence.studies().pending().isEmpty()) {
            known.clear();
        }
        return new Analysis(
                evidence,
                FindingOrder.of(evidence, bench.cancel(), known),
                Totals.of(evidence),
                LogWriter.of(bench, evidence, core.heated()));
    }

    private void tell() {
        bench.cancel().check();
        if (!evidence.studies().pending().isEmpty()) {
            listener.ifPresent(heard -> heard.accept(now()));
        }
    }
}
