package org.ohmloom.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.edit.Session;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Rule;
import org.ohmloom.review.RuleExamples;
import org.ohmloom.review.RuleInfo;
import org.ohmloom.review.Rules;
import org.ohmloom.review.Severity;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.tables.WireTables;

/** What the first remedy of each list must hold, checked here by analyses of its own. */
class RemedySearchTest {

    private static final boolean FULL = "full".equals(System.getProperty("ohmloom.campaign"));
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
                .forEach(finding -> firstClears(harness, before, search.of(finding)));
    }

    /** Rules of which some finding in the example of faults is beyond one change: there several loads share a long return. */
    private static final Set<String> BEYOND_ONE_CHANGE =
            Set.of("unit-ground-offset", "ground-offset", "lost-return-overloads");

    /** Rules tried with every build; the full campaign tries all. */
    private static final Set<String> OFTEN = Set.of("ground-loop", "sensor-return-shared", "ground-stud-crowded");

    @Test
    void onTheExampleOfFaultsTheFirstRemedyClearsItsFindingAndBringsNoneAsGrave() throws Exception {
        Harness harness = HarnessFiles.read(Path.of("examples/faults.harness.json"));
        Analysis before = analysed(harness);
        RemedySearch search = new RemedySearch(before, Cancel.NEVER);
        Set<String> seen = new HashSet<>();
        List<Finding> findings = before.findings().stream()
                .filter(finding -> RemedySearch.isAboutReturns(finding, before))
                .filter(finding -> finding.severity() != Severity.NOTE)
                .filter(finding -> FULL || OFTEN.contains(finding.rule()) && seen.add(finding.rule()))
                .toList();
        assertTrue(findings.size() >= 2, findings::toString);
        for (Finding finding : findings) {
            RemedyList list = search.of(finding);
            if (list.clearing() > 0 || !BEYOND_ONE_CHANGE.contains(finding.rule())) {
                firstClears(harness, before, list);
            }
        }
    }

    private static void firstClears(Harness harness, Analysis before, RemedyList list) {
        Finding finding = list.finding();
        assertFalse(list.remedies().isEmpty(), finding::message);
        Remedy first = list.remedies().get(0);
        assertTrue(first.clears(), () -> finding.message() + " is not cleared by " + first);
        Session session = new Session(harness, Optional.empty());
        session.apply(first.edit());
        List<Finding> after = analysed(session.current()).findings();
        assertTrue(
                after.stream()
                        .noneMatch(each -> each.rule().equals(finding.rule())
                                && each.subjects().equals(finding.subjects())),
                () -> first.edit().label() + " leaves " + finding.message());
        // one that tells mostly of the same elements was there before and has changed
        after.stream()
                .filter(each -> each.severity().compareTo(finding.severity()) <= 0)
                .forEach(each -> assertTrue(
                        before.findings().stream()
                                .anyMatch(known -> known.rule().equals(each.rule())
                                        && 2 * shared(known, each)
                                                > each.subjects().size()),
                        () -> first.edit().label() + " brings " + each.message()));
        session.undo();
        assertSame(harness, session.current());
    }

    private static long shared(Finding known, Finding finding) {
        return finding.subjects().stream().filter(known.subjects()::contains).count();
    }

    @Test
    void listsAreBoundedAndBestFirst() {
        RuleInfo rule = rulesOnReturns().findFirst().orElseThrow();
        Analysis before = analysed(RuleExamples.triggers(rule));
        for (RemedyList list : new RemedySearch(before, Cancel.NEVER).all()) {
            assertTrue(list.remedies().size() <= RemedySearch.MOST_TRIALS);
            List<Boolean> clears = list.remedies().stream().map(Remedy::clears).toList();
            assertEquals(
                    clears.stream().sorted(java.util.Comparator.reverseOrder()).toList(), clears);
        }
    }
}
