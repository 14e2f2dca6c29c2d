package org.ohmloom.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.ReturnTrial;
import org.ohmloom.edit.Session;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Rule;
import org.ohmloom.review.RuleExamples;
import org.ohmloom.review.RuleInfo;
import org.ohmloom.review.Rules;
import org.ohmloom.review.Severity;
import org.ohmloom.tables.WireTables;

/** What the first remedy of each list must hold, checked here by analyses of its own. */
@BesideOthers
class RemedySearchTest {

    private static final WireTables TABLES = WireTables.bundled();

    private static Analysis analysed(Harness harness) {
        return Analyst.analyse(harness, TABLES, Cancel.NEVER);
    }

    static Stream<RuleInfo> rulesOnReturns() {
        return Rules.ALL.stream().map(Rule::info).filter(rule -> RemedySearch.RULES.contains(rule.id()));
    }

    @ParameterizedTest
    @MethodSource("rulesOnReturns")
    void onTheExampleOfEachRuleTheFirstRemedyClearsTheFinding(RuleInfo rule) {
        Harness harness = RuleExamples.triggers(rule);
        Analysis before = analysed(harness);
        RemedySearch search = new RemedySearch(before, Cancel.NEVER);
        before.findings().stream()
                .filter(finding -> finding.rule().equals(rule.id()) && finding.severity() != Severity.NOTE)
                .filter(finding -> RemedySearch.isAboutReturns(finding, before))
                .forEach(finding -> firstClears(harness, before.findings(), search.of(finding), whole()));
    }

    /**
     * What is done with every build: the finding of the example of faults that takes most changes at once, three. The full campaign
     * searches every finding as a person would.
     */
    private static final Effort SAMPLE = new Effort(240, 1, 1, 1, 0);

    @Test
    void onTheExampleOfFaultsTheFirstRemedyClearsItsFindingAndBringsNoneAsGrave() {
        Analysis before = AnalysedExamples.of("faults");
        List<Finding> findings = before.findings().stream()
                .filter(finding -> RemedySearch.isAboutReturns(finding, before))
                .filter(finding -> finding.severity() != Severity.NOTE)
                .toList();
        if (Campaign.FULL) {
            RemedySearch search = new RemedySearch(before, Cancel.NEVER);
            findings.forEach(finding -> firstClears(before.harness(), before.findings(), search.of(finding), whole()));
            return;
        }
        Finding finding = findings.stream()
                .filter(each -> each.rule().equals("unit-ground-offset")
                        && each.subjects().equals(List.of("U1")))
                .findFirst()
                .orElseThrow();
        RemedyList list = new RemedySearch(before, SAMPLE, Cancel.NEVER).of(finding);
        firstClears(before.harness(), trial().apply(before.harness()), list, trial());
        assertEquals(RemedyKind.COMBINED, list.remedies().get(0).kind());
    }

    private static Function<Harness, List<Finding>> whole() {
        return harness -> analysed(harness).findings();
    }

    /** What can be judged without starts, protection, envelope and charge; begun anew, not from what the search has. */
    private static Function<Harness, List<Finding>> trial() {
        return harness -> ReturnTrial.of(harness, TABLES, Cancel.NEVER).findings();
    }

    private static void firstClears(
            Harness harness, List<Finding> before, RemedyList list, Function<Harness, List<Finding>> judge) {
        Finding finding = list.finding();
        assertFalse(list.remedies().isEmpty(), finding::message);
        Remedy first = list.remedies().get(0);
        assertTrue(first.clears(), () -> finding.message() + " is not cleared by " + first);
        Session session = new Session(harness, Optional.empty());
        session.apply(first.edit());
        List<Finding> after = judge.apply(session.current());
        // one of the same rule that tells mostly of the same elements is the finding itself, changed a little
        after.stream()
                .filter(each -> each.rule().equals(finding.rule()) && isAsGrave(each, finding))
                .forEach(each -> assertFalse(
                        2 * shared(finding, each) > each.subjects().size(),
                        () -> first.edit().label() + " leaves " + each.message()));
        // of any other rule it was there before, as grave
        after.stream()
                .filter(each -> isAsGrave(each, finding))
                .forEach(each -> assertTrue(
                        before.stream()
                                .anyMatch(known -> known.rule().equals(each.rule())
                                        && isAsGrave(known, each)
                                        && (each.rule().equals(finding.rule())
                                                ? known.subjects().equals(each.subjects())
                                                : 2 * shared(known, each)
                                                        > each.subjects().size())),
                        () -> first.edit().label() + " brings " + each.message()));
        session.undo();
        assertSame(harness, session.current());
    }

    private static boolean isAsGrave(Finding one, Finding other) {
        return one.severity().compareTo(other.severity()) <= 0;
    }

    private static long shared(Finding known, Finding finding) {
        return finding.subjects().stream().filter(known.subjects()::contains).count();
    }

    @Test
    void listsAreBoundedAndBestFirst() {
        RuleInfo rule = rulesOnReturns().findFirst().orElseThrow();
        Analysis before = analysed(RuleExamples.triggers(rule));
        for (RemedyList list : new RemedySearch(before, Cancel.NEVER).all()) {
            assertTrue(list.remedies().size() <= Effort.USUAL.trials() + Effort.USUAL.mended());
            List<Boolean> clears = list.remedies().stream().map(Remedy::clears).toList();
            assertEquals(clears.stream().sorted(Comparator.reverseOrder()).toList(), clears);
        }
    }
}
