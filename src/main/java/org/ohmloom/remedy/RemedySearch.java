package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.AnalysisRefusedException;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.ReturnTrial;
import org.ohmloom.model.BrokenReferenceException;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;
import org.ohmloom.tables.WireTables;

/**
 * Tries the usual remedies of returns on copies of a harness.
 *
 * <p>Every change is judged by a {@link ReturnTrial} of the changed copy against one of the harness as it is; the best are then
 * held against a whole {@link Analysis}, until one clears its finding there too, at most {@link #MOST_WHOLE} for a finding. Safe on
 * any thread, one at a time.
 */
public final class RemedySearch {

    /** Most changes tried against one finding. */
    public static final int MOST_TRIALS = 16;

    /** Most whole analyses for one finding. */
    public static final int MOST_WHOLE = 3;

    private static final String SENSOR_ERROR = "sensor-error-over-limit";

    /** Rules about returns, whose findings remedies are tried for. */
    static final Set<String> RULES = Set.of(
            "ground-loop",
            "sensor-return-shared",
            SENSOR_ERROR,
            "ground-stud-crowded",
            "unit-ground-offset",
            "unit-offset-survival",
            "ground-offset",
            "bus-common-mode",
            "lost-return-overloads",
            "coupling-over-limit");

    private static final Comparator<Remedy> BEST_FIRST = Comparator.comparing(Remedy::clears)
            .reversed()
            .thenComparing(Remedy::worsening)
            .thenComparing(Comparator.comparing(Remedy::bettering).reversed())
            .thenComparing(RemedySearch::costKg)
            .thenComparing(remedy -> remedy.effect().map(Effect::after).orElse(0.0));

    private final Analysis analysis;
    private final WireTables tables;
    private final Cancel cancel;
    private final Candidates candidates;
    private final ReturnTrial before;

    /**
     * Prepares a search.
     *
     * @param analysis results of the harness as it is
     * @param cancel   asks to stop
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public RemedySearch(Analysis analysis, Cancel cancel) {
        this.analysis = analysis;
        this.tables = analysis.evidence().tables();
        this.cancel = cancel;
        this.candidates = new Candidates(analysis);
        this.before = ReturnTrial.of(analysis.harness(), tables, cancel);
    }

    /**
     * Whether a finding is about returns, so that remedies can be tried. A sensor's error is when a return makes most of it.
     *
     * @param finding a finding of the analysis
     * @param results the analysis
     */
    public static boolean isAboutReturns(Finding finding, Analysis results) {
        return RULES.contains(finding.rule())
                && (!finding.rule().equals(SENSOR_ERROR)
                        || results.evidence().returns().sensors().stream()
                                .filter(budget -> budget.isOver()
                                        && finding.subjects()
                                                .contains(budget.sensor().value()))
                                .flatMap(budget -> budget.largest().stream())
                                .anyMatch(part -> part.name().contains("return")));
    }

    /** Remedies for every open finding on returns that is worse than a note, in the order of the report. */
    public List<RemedyList> all() {
        return analysis.findings().stream()
                .filter(finding -> finding.isOpen() && finding.severity() != Severity.NOTE)
                .filter(finding -> isAboutReturns(finding, analysis))
                .map(this::of)
                .toList();
    }

    /**
     * Remedies for one finding.
     *
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public RemedyList of(Finding finding) {
        List<Candidate> all = candidates.of(finding);
        List<Remedy> tried = new ArrayList<>();
        for (Candidate candidate : all.subList(0, Math.min(MOST_TRIALS, all.size()))) {
            cancel.check();
            tried(finding, candidate, tried);
        }
        tried.sort(BEST_FIRST);
        confirm(finding, tried);
        return new RemedyList(finding, tried, Math.max(0, all.size() - MOST_TRIALS));
    }

    private void tried(Finding finding, Candidate candidate, List<Remedy> tried) {
        try {
            Harness changed = candidate.edit().apply(analysis.harness());
            if (changed != analysis.harness()) {
                tried.add(remedy(finding, candidate, before.changed(changed, cancel)));
            }
        } catch (BrokenReferenceException | AnalysisRefusedException notPossible) {
            // what other parts of the harness rest on cannot go: not a remedy
            cancel.check();
        }
    }

    private Remedy remedy(Finding finding, Candidate candidate, ReturnTrial after) {
        return new Remedy(
                candidate.kind(),
                candidate.edit(),
                Effects.of(finding, before.evidence(), after.evidence()),
                after.totals().copperKg() - before.totals().copperKg(),
                after.totals().lengthMetres() - before.totals().lengthMetres(),
                clears(finding, before.findings(), after.findings()),
                missing(before.findings(), after.findings()),
                missing(after.findings(), before.findings()));
    }

    /** Holds the best against whole analyses until one clears its finding there too. */
    private void confirm(Finding finding, List<Remedy> tried) {
        for (int round = 0;
                round < MOST_WHOLE && !tried.isEmpty() && tried.get(0).clears();
                round++) {
            cancel.check();
            Remedy best = tried.get(0);
            Analysis whole = Analyst.analyse(best.edit().apply(analysis.harness()), tables, cancel);
            boolean clears = clears(finding, analysis.findings(), whole.findings());
            tried.set(
                    0,
                    new Remedy(
                            best.kind(),
                            best.edit(),
                            best.effect(),
                            best.addedCopperKg(),
                            best.addedMetres(),
                            clears,
                            missing(analysis.findings(), whole.findings()),
                            missing(whole.findings(), analysis.findings())));
            if (clears) {
                return;
            }
            tried.sort(BEST_FIRST);
        }
    }

    private static boolean clears(Finding finding, List<Finding> before, List<Finding> after) {
        return after.stream().noneMatch(each -> same(each, finding))
                && missing(after, before).stream()
                        .filter(added -> added.severity().compareTo(finding.severity()) <= 0)
                        .allMatch(added -> !added.rule().equals(finding.rule()) && isChanged(added, before));
    }

    /** Whether more than half of what a finding is about stood in one of the same rule before: it changed, it is not new. */
    private static boolean isChanged(Finding finding, List<Finding> before) {
        return before.stream()
                .anyMatch(each -> each.rule().equals(finding.rule())
                        && each.severity() == finding.severity()
                        && 2
                                        * finding.subjects().stream()
                                                .filter(each.subjects()::contains)
                                                .count()
                                > finding.subjects().size());
    }

    /** Findings of the one list that the other does not have. */
    private static List<Finding> missing(List<Finding> here, List<Finding> there) {
        return here.stream()
                .filter(finding -> there.stream().noneMatch(each -> same(each, finding)))
                .toList();
    }

    private static boolean same(Finding one, Finding other) {
        return one.rule().equals(other.rule())
                && one.severity() == other.severity()
                && one.subjects().equals(other.subjects());
    }

    private static double costKg(Remedy remedy) {
        return Math.max(0, remedy.addedCopperKg());
    }
}
