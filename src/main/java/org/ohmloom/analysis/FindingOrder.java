package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
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

    /**
     * Findings, errors first, then in the order of the rules, then by subject, each once; of rules that need not wait for a study.
     */
    static List<Finding> of(Evidence evidence, Cancel cancel) {
        List<Finding> findings = new ArrayList<>();
        for (Rule rule : Rules.ALL) {
            cancel.check();
            if (!evidence.isReadyFor(rule)) {
                continue;
            }
            Set<Finding> told = new LinkedHashSet<>();
            rule.review(evidence, finding -> told.add(accepted(evidence, finding)));
            List<Finding> found = new ArrayList<>(told);
            found.sort(Comparator.comparing(FindingOrder::firstSubject, NaturalOrder.INSTANCE));
            findings.addAll(found);
        }
        findings.sort(Comparator.comparing(Finding::severity));
        return findings;
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
