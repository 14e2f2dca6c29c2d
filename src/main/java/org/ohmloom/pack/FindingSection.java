package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Waiver;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;

/** The findings by severity, then those a person has accepted, with the reason. */
final class FindingSection {
    private static final List<Column> COLUMNS = List.of(
            Column.words("Severity"),
            Column.words("Where"),
            Column.words("Finding"),
            Column.code("Rule"),
            Column.words("Source"));

    private static final List<Column> ACCEPTED = List.of(
            Column.words("Severity"),
            Column.words("Where"),
            Column.words("Finding"),
            Column.code("Rule"),
            Column.words("Accepted because"),
            Column.words("By"),
            Column.code("Date"));

    private final Analysis analysis;

    FindingSection(Analysis analysis) {
        this.analysis = analysis;
    }

    List<Block> blocks() {
        List<Row> open = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            List<Finding> found = analysis.findings().stream()
                    .filter(finding -> finding.isOpen() && finding.severity() == severity)
                    .toList();
            if (!found.isEmpty()) {
                open.add(Row.group(meaning(severity) + ": " + found.size()));
                found.forEach(finding -> open.add(row(finding)));
            }
        }
        List<Row> accepted = new ArrayList<>();
        for (Finding finding : analysis.findings()) {
            finding.waiver().ifPresent(waiver -> accepted.add(accepted(finding, waiver)));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Findings"));
        blocks.add(new Block.Table("findings", COLUMNS, open, "No finding is open."));
        if (!accepted.isEmpty()) {
            blocks.add(new Block.Heading("Accepted findings"));
            blocks.add(new Block.Table("accepted", ACCEPTED, accepted, ""));
        }
        return blocks;
    }

    private static Row row(Finding finding) {
        Cell severity = Cell.text(word(finding.severity()));
        return Row.of(
                finding.severity() == Severity.ERROR ? severity.toned(Cell.Tone.ALERT) : severity,
                Cell.text(String.join(", ", finding.subjects())),
                Cell.text(Wording.printed(finding.message())),
                Cell.text(finding.rule()),
                Cell.text(Wording.printed(finding.source())));
    }

    private static Row accepted(Finding finding, Waiver waiver) {
        return Row.of(
                Cell.text(word(finding.severity())),
                Cell.text(String.join(", ", finding.subjects())),
                Cell.text(Wording.printed(finding.message())),
                Cell.text(finding.rule()),
                Cell.text(waiver.reason()),
                Cell.text(waiver.by()),
                Cell.text(waiver.date()));
    }

    private static String word(Severity severity) {
        return switch (severity) {
            case ERROR -> "error";
            case WARNING -> "warning";
            case NOTE -> "note";
        };
    }

    private static String meaning(Severity severity) {
        return switch (severity) {
            case ERROR -> "Errors, must not be built like this";
            case WARNING -> "Warnings, to be looked at by a person";
            case NOTE -> "Notes, worth knowing";
        };
    }
}
