package org.ohmloom.workbench;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;

/** Findings as rows: a heading for each severity that is shown, its findings below it. Knows nothing of the screen. */
final class FindingsModel {

    /**
     * A row.
     *
     * @param severity severity of the finding or of the group
     * @param finding  the finding; empty for a heading
     * @param count    count of findings of the group, for a heading
     */
    record Row(Severity severity, Optional<Finding> finding, long count) {

        boolean isHeading() {
            return finding.isEmpty();
        }
    }

    private FindingsModel() {}

    /** The rows of findings of some severities, accepted ones last in their group. */
    static List<Row> rows(List<Finding> findings, Set<Severity> shown) {
        List<Row> rows = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            List<Finding> group = findings.stream()
                    .filter(finding -> finding.severity() == severity)
                    .sorted((one, other) -> Boolean.compare(other.isOpen(), one.isOpen()))
                    .toList();
            if (shown.contains(severity) && !group.isEmpty()) {
                rows.add(new Row(severity, Optional.empty(), group.size()));
                group.forEach(finding -> rows.add(new Row(severity, Optional.of(finding), 1)));
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
