package org.ohmloom.workbench.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;
import org.ohmloom.workbench.desk.Results;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Findings as rows: a heading for each severity that is shown, its findings below it. Knows nothing of the screen. */
public final class FindingsModel {
    private static final Words WORDS = Words.of("findings");

    /**
     * A row.
     *
     * @param severity severity of the finding or of the group
     * @param finding  the finding; empty for a heading
     * @param count    count of findings of the group, for a heading
     * @param again    whether the finding is being worked out again
     * @param title    what the group is called, for a heading
     */
    public record Row(Severity severity, Optional<Finding> finding, long count, boolean again, String title) {

        boolean isHeading() {
            return finding.isEmpty();
        }
    }

    private FindingsModel() {}

    /** What findings are put together by. */
    enum Grouping {
        SEVERITY,
        RULE,
        THING
    }

    /** The rows of findings of some severities, by severity. */
    static List<Row> rows(List<Results.Standing> findings, Set<Severity> shown) {
        return rows(findings, shown, "", Grouping.SEVERITY);
    }

    /**
     * The rows of findings, groups in the order of their gravest finding, accepted ones last in their group.
     *
     * @param shown    severities that are shown
     * @param words    words a finding must hold to be shown; empty for all
     * @param grouping what they are put together by
     */
    static List<Row> rows(List<Results.Standing> findings, Set<Severity> shown, String words, Grouping grouping) {
        List<String> wanted = List.of(words.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        Map<String, List<Results.Standing>> groups = new LinkedHashMap<>();
        for (Severity severity : Severity.values()) {
            for (Results.Standing each : findings) {
                Finding finding = each.finding();
                if (finding.severity() == severity && shown.contains(severity) && holds(finding, wanted)) {
                    groups.computeIfAbsent(title(finding, grouping), title -> new ArrayList<>())
                            .add(each);
                }
            }
        }
        List<Row> rows = new ArrayList<>();
        groups.forEach((title, group) -> {
            group.sort((one, other) ->
                    Boolean.compare(other.finding().isOpen(), one.finding().isOpen()));
            Severity gravest = group.stream()
                    .map(each -> each.finding().severity())
                    .min(Comparator.naturalOrder())
                    .orElseThrow();
            rows.add(new Row(gravest, Optional.empty(), group.size(), false, title));
            group.forEach(each ->
                    rows.add(new Row(each.finding().severity(), Optional.of(each.finding()), 1, each.again(), "")));
        });
        return rows;
    }

    private static boolean holds(Finding finding, List<String> words) {
        String text = (Words.said(finding.sentence()) + " " + finding.rule() + " "
                        + String.join(" ", finding.subjects()) + " " + Words.said(finding.citation()))
                .toLowerCase(Locale.ROOT);
        return words.stream().allMatch(text::contains);
    }

    private static String title(Finding finding, Grouping grouping) {
        return switch (grouping) {
            case SEVERITY -> plural(finding.severity());
            case RULE -> TradeWords.rule(finding.rule());
            case THING -> finding.subjects().isEmpty() ? "" : finding.subjects().get(0);
        };
    }

    /** All severities. */
    static Set<Severity> all() {
        return EnumSet.allOf(Severity.class);
    }

    /** The name of a group. */
    static String plural(Severity severity) {
        return switch (severity) {
            case ERROR -> WORDS.get("findings.errors");
            case WARNING -> WORDS.get("findings.warnings");
            case NOTE -> WORDS.get("findings.notes");
        };
    }
}
