package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.Waiver;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Rule;
import org.ohmloom.review.Rules;

/** Runs all rules over the evidence, marks accepted findings and puts them in the order of the report. */
final class FindingOrder {

    private FindingOrder() {}

    /** Findings of every rule that need not wait for a study, as of {@link #of(Evidence, Cancel, Map)} with nothing known. */
    static List<Finding> of(Evidence evidence, Cancel cancel) {
        return of(evidence, cancel, new HashMap<>());
    }

    /**
     * Findings, errors first, then in the order of the rules, then by subject, each once; of rules that need not wait for a study.
     *
     * @param known what rules found in evidence that has the same of all they need; what the others find is added
     */
    static List<Finding> of(Evidence evidence, Cancel cancel, Map<Rule, List<Finding>> known) {
        List<Finding> findings = new ArrayList<>();
        for (Rule rule : Rules.ALL) {
            cancel.check();
            if (!evidence.isReadyFor(rule)) {
                continue;
            }
            findings.addAll(known.computeIfAbsent(rule, any -> found(rule, evidence, cancel)));
        }
        findings.sort(Comparator.comparing(Finding::severity));
        return findings;
    }

    private static List<Finding> found(Rule rule, Evidence evidence, Cancel cancel) {
        Set<Finding> told = new LinkedHashSet<>();
        rule.review(evidence, finding -> {
            cancel.check();
            told.add(accepted(evidence, finding));
        });
        List<Finding> found = new ArrayList<>(told);
        found.sort(Comparator.comparing(FindingOrder::firstSubject, NaturalOrder.INSTANCE));
        return found;
    }

    private static String firstSubject(Finding finding) {
        return finding.subjects().isEmpty() ? "" : finding.subjects().get(0);
    }

    private static Finding accepted(Evidence evidence, Finding finding) {
        Optional<Waiver> waiver = evidence.harness().waivers().all().stream()
                .filter(candidate -> candidate.rule().equals(finding.rule())
                        && candidate.subjects().equals(finding.subjects()))
                .findFirst();
        return waiver.map(finding::waivedBy).orElse(finding);
    }
}
