package org.ohmloom.remedy;

import java.util.List;
import org.ohmloom.review.Finding;

/**
 * What a change does to the findings of a harness.
 *
 * @param gone    whether the finding the change is made for is gone
 * @param removed findings that are gone
 * @param added   findings that are new
 * @param grave   those of the new ones that are as severe as the finding, or more
 */
record Comparison(boolean gone, List<Finding> removed, List<Finding> added, List<Finding> grave) {

    static Comparison of(Finding finding, List<Finding> before, List<Finding> after) {
        List<Finding> added = missing(after, before);
        List<Finding> grave = added.stream()
                .filter(each -> each.severity().compareTo(finding.severity()) <= 0)
                .filter(each -> each.rule().equals(finding.rule()) || !isChanged(each, before))
                .toList();
        boolean gone = after.stream().noneMatch(each -> same(each, finding));
        return new Comparison(gone, missing(before, after), added, grave);
    }

    /** Whether the finding is gone and nothing new is as severe. */
    boolean clears() {
        return gone && grave.isEmpty();
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
}
