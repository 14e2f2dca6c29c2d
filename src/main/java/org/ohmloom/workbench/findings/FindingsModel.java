package org.ohmloom.workbench.findings;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;
import org.ohmloom.workbench.desk.Results;

/** Findings as rows: a heading for each severity that is shown, its findings below it. Knows nothing of the screen. */
public final class FindingsModel {

    /**
     * A row.
     *
     * @param severity severity of the finding or of the group
     * @param finding  the finding; empty for a heading
     * @param count    count of findings of the group, for a heading
     * @param again    whether the finding is being worked out again
     */
    public record Row(Severity severity, Optional<Finding> finding, long count, boolean again) {

        boolean isHeading() {
            return finding.isEmpty();
        }
    }

    private FindingsModel() {}

    /** The rows of findings of some severities, accepted ones last in their group. */
    static List<Row> rows(List<Results.Standing> findings, Set<Severity> shown) {
        List<Row> rows = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            List<Results.Standing> group = findings.stream()
                    .filter(each -> each.finding().severity() == severity)
                    .sorted((one, other) -> Boolean.compare(
                            other.finding().isOpen(), one.finding().isOpen()))
                    .toList();
            if (shown.contains(severity) && !group.isEmpty()) {
                rows.add(new Row(severity, Optional.empty(), group.size(), false));
                group.forEach(each -> rows.add(new Row(severity, Optional.of(each.finding()), 1, each.again())));
            }
        }
        return rows;
    }

    /** All severities. */
    static Set<Severity> all() {
        return EnumSet.allOf(Severity.class);
    }

    /** The name of a group. */
    static String plural(Severity severity) {
        return switch (severity) {
            case ERROR -> "Errors";
            case WARNING -> "Warnings";
            case NOTE -> "Notes";
        };
    }
}
