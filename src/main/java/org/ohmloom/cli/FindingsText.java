package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;

/** Findings as text. */
final class FindingsText {

    private FindingsText() {}

    /** Counts, and the first open findings with their sentence. */
    static void summary(Analysis analysis, int most, PrintWriter out) {
        out.println("FINDINGS: " + CheckText.counted(analysis, Severity.ERROR) + ", "
                + CheckText.counted(analysis, Severity.WARNING) + ", " + CheckText.counted(analysis, Severity.NOTE));
        List<Finding> open = analysis.findings().stream()
                .filter(finding -> finding.isOpen() && finding.severity() != Severity.NOTE)
                .toList();
        open.stream()
                .limit(most)
                .forEach(finding -> out.println(String.format(
                        Locale.ROOT, "  %-7s  %s", finding.severity().name(), finding.message())));
        if (open.size() > most) {
            out.println("  and " + (open.size() - most) + " more below");
        }
    }

    /** Every finding with its rule, source, fix and waiver. */
    static void details(Analysis analysis, PrintWriter out) {
        if (analysis.findings().isEmpty()) {
            return;
        }
        out.println();
        out.println("FINDINGS IN FULL");
        for (Finding finding : analysis.findings()) {
            out.println(
                    String.format(Locale.ROOT, "  %-7s  %s", finding.severity().name(), finding.message()));
            out.println(Wrap.indented("rule " + finding.rule() + "; source: " + finding.source(), 11, 120));
            finding.fix()
                    .ifPresent(
                            fix -> out.println("           fix: " + fix.label().english()));
            finding.waiver()
                    .ifPresent(waiver -> out.println(
                            "           accepted by " + waiver.by() + ", " + waiver.date() + ": " + waiver.reason()));
        }
    }
}
