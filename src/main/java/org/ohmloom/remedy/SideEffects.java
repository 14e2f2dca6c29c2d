package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.analysis.ReturnTrial;
import org.ohmloom.review.Finding;

/**
 * What else it takes where a change takes its finding away and brings others: for each of those the edit it offers itself, such as
 * the conductor the chooser asks for, or a remedy thought of on the changed copy.
 */
final class SideEffects {

    /** Most ways tried to take away one new finding. */
    private static final int MOST_WAYS = 2;

    private SideEffects() {}

    /** The change with what takes away all it brings, as far as something is known against each. */
    static List<Candidate> against(Candidate candidate, List<Finding> grave, ReturnTrial after) {
        List<Candidate> found = List.of();
        for (Finding finding : grave) {
            List<Candidate> ways = ways(finding, after);
            List<Candidate> next = new ArrayList<>();
            for (Candidate start : found) {
                ways.forEach(way -> start.with(way).ifPresent(next::add));
            }
            if (found.isEmpty()) {
                next.addAll(ways);
            }
            if (!next.isEmpty()) {
                found = next.subList(0, Math.min(MOST_WAYS, next.size()));
            }
        }
        return found.stream().map(candidate::then).toList();
    }

    private static List<Candidate> ways(Finding finding, ReturnTrial after) {
        Optional<Candidate> offered = finding.fix().map(edit -> new Candidate(RemedyKind.COMBINED, edit));
        if (offered.isPresent() || !RemedySearch.RULES.contains(finding.rule())) {
            return offered.stream().toList();
        }
        return new Candidates(after.evidence())
                .of(finding).stream().limit(MOST_WAYS).toList();
    }
}
