package org.ohmloom.workbench.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Rule;
import org.ohmloom.review.Rules;
import org.ohmloom.review.Severity;
import org.ohmloom.review.StudyPart;

/**
 * The latest results, and older ones for what is still being worked out in them.
 *
 * @param newestFirst the analyses, the latest first; each has something that none before it has
 */
public record Results(List<Analysis> newestFirst) {

    /** Nothing calculated yet. */
    static final Results NONE = new Results(List.of());

    public Results {
        newestFirst = List.copyOf(newestFirst);
    }

    /** One analysis, if there is one. */
    static Results of(Optional<Analysis> analysis) {
        return new Results(analysis.stream().toList());
    }

    /** These with a newer analysis; what it has takes the place of the same in older ones. */
    Results with(Analysis newer) {
        List<Analysis> kept = new ArrayList<>(List.of(newer));
        Set<StudyPart> missing = EnumSet.noneOf(StudyPart.class);
        missing.addAll(newer.pending());
        for (Analysis older : newestFirst) {
            if (!older.pending().containsAll(missing)) {
                kept.add(older);
                missing.retainAll(older.pending());
            }
        }
        return new Results(kept);
    }

    /** The latest results. */
    Optional<Analysis> latest() {
        return newestFirst.stream().findFirst();
    }

    /** The latest results in which these studies are worked out; without any, none. */
    Optional<Analysis> having(Set<StudyPart> parts) {
        return newestFirst.stream()
                .filter(each -> each.evidence().studies().has(parts))
                .findFirst();
    }

    /** Whether these studies are worked out in the latest results. */
    public boolean has(Set<StudyPart> parts) {
        return latest().filter(each -> each.evidence().studies().has(parts)).isPresent();
    }

    /** The whole results of a harness, if they are still there. */
    Optional<Analysis> wholeOf(Harness harness) {
        return newestFirst.stream()
                .filter(each -> each.harness() == harness && each.isWhole())
                .findFirst();
    }

    /**
     * A finding as it stands.
     *
     * @param finding the finding
     * @param again   whether it is an older one whose rule is still being worked out for the harness as it is now
     */
    public record Standing(Finding finding, boolean again) {}

    /**
     * The latest findings of every rule, errors first, then in the order of the rules.
     *
     * @param harness the harness as it is
     */
    List<Standing> findings(Optional<Harness> harness) {
        List<Standing> all = new ArrayList<>();
        for (Rule rule : Rules.ALL) {
            newestFirst.stream()
                    .filter(each -> each.evidence().isReadyFor(rule))
                    .findFirst()
                    .ifPresent(results -> {
                        boolean again =
                                harness.filter(now -> now == results.harness()).isEmpty();
                        results.findings().stream()
                                .filter(finding ->
                                        finding.rule().equals(rule.info().id()))
                                .forEach(finding -> all.add(new Standing(finding, again)));
                    });
        }
        all.sort(Comparator.comparing(each -> each.finding().severity()));
        return all;
    }

    /** Count of findings of a severity that are not accepted. */
    public long count(Severity severity) {
        return findings(Optional.empty()).stream()
                .map(Standing::finding)
                .filter(finding -> finding.isOpen() && finding.severity() == severity)
                .count();
    }
}
