package org.ohmloom.review;

import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.WireTables;

/** Analyses harnesses with the shipped tables. */
final class Examined {

    private static final WireTables TABLES = WireTables.bundled();

    private Examined() {}

    static Analysis analysis(Harness harness) {
        return Analyst.analyse(harness, TABLES, Cancel.NEVER);
    }

    static List<Finding> findings(Harness harness) {
        return analysis(harness).findings();
    }

    /** The example that breaks a rule. */
    static Harness breaking(String rule) {
        return RuleExamples.triggers(info(rule));
    }

    /** The example that stays just within a rule. */
    static Harness within(String rule) {
        return RuleExamples.nearly(info(rule));
    }

    private static RuleInfo info(String rule) {
        return Rules.ALL.stream()
                .map(Rule::info)
                .filter(info -> info.id().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    /** The findings of one rule. */
    static List<Finding> findings(Harness harness, String rule) {
        return findings(harness).stream()
                .filter(finding -> finding.rule().equals(rule))
                .toList();
    }
}
