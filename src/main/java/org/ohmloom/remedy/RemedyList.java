package org.ohmloom.remedy;

import java.util.List;
import org.ohmloom.review.Finding;

/**
 * What was tried against one finding.
 *
 * @param finding  the finding
 * @param remedies what was tried, best first: what clears the finding before what does not, then by new and removed findings,
 *                 added copper and the number that is left
 * @param untried  count of further changes nobody tried, since enough were
 * @param foreseen count of changes and combinations whose effect on the finding's number was foreseen before any was tried; 0
 *                 where it has none that can be
 * @param spent    whether that count reached its bound before all combinations were looked at
 */
public record RemedyList(Finding finding, List<Remedy> remedies, int untried, int foreseen, boolean spent) {

    public RemedyList {
        remedies = List.copyOf(remedies);
    }

    /** How many of them clear the finding. */
    public long clearing() {
        return remedies.stream().filter(Remedy::clears).count();
    }
}
