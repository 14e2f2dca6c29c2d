package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.AnalysisRefusedException;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.ReturnTrial;
import org.ohmloom.model.BrokenReferenceException;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;

/**
 * Tries the usual remedies of returns on copies of a harness.
 *
 * <p>Where the number of the finding can be foreseen, single changes and combinations of up to three are looked for among those that
 * bring it within its limit ({@link Combinations}); they are tried first, then single changes. Every change is judged by a
 * {@link ReturnTrial} of the changed copy against the harness as it is. Where none clears the finding but one takes it away and
 * brings others as severe, what takes those away is joined to it ({@link SideEffects}) and tried. The best are then held against
 * all rules, until one clears its finding there too. {@link Effort} bounds all of it. Safe on any thread, one at a time.
 */
public final class RemedySearch {

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

    private static final Comparator<Tried> BEST_FIRST = Comparator.comparing(
            Tried::remedy,
            Comparator.comparing(Remedy::clears)
                    .reversed()
                    .thenComparing(Remedy::worsening)
                    .thenComparing(Comparator.comparing(Remedy::bettering).reversed())
                    .thenComparing(RemedySearch::byCost)
                    .thenComparing(remedy -> remedy.effect().map(Effect::after).orElse(0.0)));

    private final Analysis analysis;
    private final Cancel cancel;
    private final Candidates candidates;
    private final ReturnTrial before;
    private final Effort effort;
    private List<Finding> wholeBefore = List.of();

    /** A change that was tried. */
    private record Tried(Candidate candidate, ReturnTrial after, Comparison compared, Remedy remedy) {}

    /**
     * Prepares a search.
     *
     * @param analysis results of the harness as it is
     * @param cancel   asks to stop
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public RemedySearch(Analysis analysis, Cancel cancel) {
        this(analysis, Effort.USUAL, cancel);
    }

    /**
     * Prepares a search.
     *
     * @param analysis results of the harness as it is
     * @param effort   how much it may do against one finding
     * @param cancel   asks to stop
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public RemedySearch(Analysis analysis, Effort effort, Cancel cancel) {
        this.analysis = analysis;
        this.effort = effort;
        this.cancel = cancel;
        this.candidates = new Candidates(analysis.evidence());
        this.before = ReturnTrial.of(analysis, cancel);
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
        List<Candidate> singles = candidates.of(finding);
        Optional<Combinations> foreseen = Targets.of(finding, before.evidence())
                .map(target ->
                        Combinations.of(singles, candidates, new Foresight(before, target, effort.foreseen(), cancel)));
        List<Candidate> all = foreseen.map(this::inOrder).orElse(singles);
        List<Tried> tried = new ArrayList<>();
        for (Candidate candidate : all.subList(0, Math.min(effort.trials(), all.size()))) {
            tried(finding, candidate).ifPresent(tried::add);
        }
        mend(finding, tried);
        tried.sort(BEST_FIRST);
        confirm(finding, tried);
        return new RemedyList(
                finding,
                tried.stream().map(Tried::remedy).toList(),
                Math.max(0, all.size() - effort.trials()),
                foreseen.map(Combinations::count).orElse(0),
                foreseen.map(Combinations::spent).orElse(false));
    }

    /** What is foreseen to serve, then single changes, those that leave least first. */
    private List<Candidate> inOrder(Combinations foreseen) {
        Set<Candidate> all = new LinkedHashSet<>();
        foreseen.serving().stream().limit(effort.serving()).forEach(each -> all.add(each.candidate()));
        foreseen.alone().forEach(each -> all.add(each.candidate()));
        foreseen.serving().forEach(each -> all.add(each.candidate()));
        return List.copyOf(all);
    }

    private Optional<Tried> tried(Finding finding, Candidate candidate) {
        cancel.check();
        try {
            return candidate.on(analysis.harness()).map(changed -> {
                ReturnTrial after = before.changed(changed, cancel);
                Comparison compared = Comparison.of(finding, before.findings(), after.findings());
                return new Tried(candidate, after, compared, remedy(finding, candidate, after, compared));
            });
        } catch (BrokenReferenceException | AnalysisRefusedException notPossible) {
            // what other parts of the harness rest on cannot go: not a remedy
            return Optional.empty();
        }
    }

    private Remedy remedy(Finding finding, Candidate candidate, ReturnTrial after, Comparison compared) {
        StrapCopper straps = StrapCopper.of(after.evidence());
        StrapCopper strapsNow = StrapCopper.of(before.evidence());
        return new Remedy(
                candidate.kind(),
                candidate.edit(),
                Effects.of(finding, before.evidence(), after.evidence()),
                after.totals().copperKg() + straps.copperKg() - before.totals().copperKg() - strapsNow.copperKg(),
                after.totals().lengthMetres()
                        + straps.lengthMetres()
                        - before.totals().lengthMetres()
                        - strapsNow.lengthMetres(),
                straps.unknown().stream()
                        .filter(strap -> !strapsNow.unknown().contains(strap))
                        .toList(),
                compared.clears(),
                compared.removed(),
                compared.added());
    }

    /** Where nothing clears the finding: joins what takes it away with what takes away what that brings. */
    private void mend(Finding finding, List<Tried> tried) {
        Set<Candidate> seen = new HashSet<>();
        for (int count = 0;
                count < effort.mended()
                        && tried.stream().noneMatch(each -> each.remedy().clears()); ) {
            Optional<Tried> start = tried.stream()
                    .filter(each -> each.compared().gone() && !seen.contains(each.candidate()))
                    .min(Comparator.comparingInt(
                                    (Tried each) -> each.compared().grave().size())
                            .thenComparing(Tried::remedy, RemedySearch::byCost));
            if (start.isEmpty()) {
                return;
            }
            seen.add(start.get().candidate());
            for (Candidate mended : SideEffects.against(
                    start.get().candidate(),
                    start.get().compared().grave(),
                    start.get().after())) {
                if (count++ < effort.mended()) {
                    tried(finding, mended).ifPresent(tried::add);
                }
            }
        }
    }

    /** Holds the best against all rules until one clears its finding there too. */
    private void confirm(Finding finding, List<Tried> tried) {
        for (int round = 0;
                round < effort.whole()
                        && !tried.isEmpty()
                        && tried.get(0).remedy().clears();
                round++) {
            cancel.check();
            Tried best = tried.get(0);
            Comparison whole =
                    Comparison.of(finding, wholeBefore(), best.after().wholeFindings(cancel));
            tried.set(
                    0,
                    new Tried(
                            best.candidate(),
                            best.after(),
                            whole,
                            remedy(finding, best.candidate(), best.after(), whole)));
            if (whole.clears()) {
                return;
            }
            tried.sort(BEST_FIRST);
        }
    }

    private List<Finding> wholeBefore() {
        if (wholeBefore.isEmpty()) {
            wholeBefore = before.wholeFindings(cancel);
        }
        return wholeBefore;
    }

    private static int byCost(Remedy one, Remedy other) {
        return Double.compare(costKg(one), costKg(other));
    }

    private static double costKg(Remedy remedy) {
        return Math.max(0, remedy.addedCopperKg());
    }
}
