package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Waiver;
import org.ohmloom.model.WaiverId;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Rule;
import org.ohmloom.review.RuleExamples;
import org.ohmloom.review.RuleInfo;
import org.ohmloom.review.Rules;
import org.ohmloom.review.Severity;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.HarnessText;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.GaugeSystem;

/** What every rule keeps to, each on its own two examples. */
@BesideOthers
class RuleContractTest {

    private static final WireTables TABLES = WireTables.bundled();

    private static final int LONGEST_MESSAGE = 160;

    private static final Map<String, List<Finding>> TRIGGERED = new ConcurrentHashMap<>();

    static Stream<RuleInfo> rules() {
        return Rules.ALL.stream().map(Rule::info);
    }

    /** All in the full campaign, every sixth otherwise. */
    static Stream<RuleInfo> someRules() {
        int stride = Campaign.count(6, 1);
        return IntStream.range(0, Rules.ALL.size())
                .filter(at -> at % stride == 0)
                .mapToObj(at -> Rules.ALL.get(at).info());
    }

    private static List<Finding> findings(Harness harness) {
        return Analyst.analyse(harness, TABLES, Cancel.NEVER).findings();
    }

    /** What the example of a rule gives, worked out once. */
    private static List<Finding> triggered(RuleInfo rule) {
        return TRIGGERED.computeIfAbsent(rule.id(), id -> findings(RuleExamples.triggers(rule)));
    }

    @Test
    void idsAreKebabCaseAndUniqueAndEveryRuleIsDocumented() {
        Set<String> ids = new HashSet<>();
        rules().forEach(rule -> {
            assertTrue(rule.id().matches("[a-z]+(-[a-z]+)*"), rule::id);
            assertTrue(ids.add(rule.id()), rule::id);
            assertTrue(rule.why().english().endsWith("."), rule::id);
            assertTrue(rule.remedy().english().endsWith("."), rule::id);
        });
    }

    @ParameterizedTest
    @MethodSource("rules")
    void theRuleFiresOnItsExampleAndOnNothingElseThere(RuleInfo rule) {
        Harness harness = RuleExamples.triggers(rule);
        List<Finding> findings = triggered(rule);
        assertTrue(findings.stream().anyMatch(finding -> finding.rule().equals(rule.id())), findings::toString);
        for (Finding finding : findings) {
            assertEquals(rule.id(), finding.rule(), finding::toString);
            assertTrue(finding.message().length() <= LONGEST_MESSAGE, finding::message);
            assertTrue(finding.message().endsWith("."), finding::message);
            assertFalse(finding.message().contains("\n"), finding::message);
            assertFalse(finding.source().isBlank(), finding::toString);
            finding.subjects()
                    .forEach(subject -> assertTrue(harness.element(subject).isPresent(), finding::toString));
        }
    }

    @ParameterizedTest
    @MethodSource("rules")
    void theRuleIsSilentOnWhatNearlyBreaksIt(RuleInfo rule) {
        List<Finding> findings = findings(RuleExamples.nearly(rule));
        assertEquals(
                List.of(),
                findings.stream()
                        .filter(finding -> finding.rule().equals(rule.id()))
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("rules")
    void everyFixRemovesItsFindingAndBringsNoneAsGrave(RuleInfo rule) {
        Harness harness = RuleExamples.triggers(rule);
        List<Finding> before = triggered(rule);
        for (Finding finding : before) {
            finding.fix().ifPresent(fix -> {
                List<Finding> after = findings(fix.apply(harness));
                assertTrue(
                        after.stream()
                                .noneMatch(left -> left.rule().equals(finding.rule())
                                        && left.subjects().equals(finding.subjects())),
                        () -> fix.label() + " leaves " + finding);
                after.stream()
                        .filter(other -> other.severity().compareTo(finding.severity()) <= 0)
                        .forEach(other -> assertTrue(
                                before.stream()
                                        .anyMatch(known -> known.rule().equals(other.rule())
                                                && known.subjects().equals(other.subjects())),
                                () -> fix.label() + " brings " + other));
            });
        }
    }

    @ParameterizedTest
    @MethodSource("someRules")
    void aWaiverMarksItsFindingAcceptedAndNoOther(RuleInfo rule) {
        Harness harness = RuleExamples.triggers(rule);
        Finding first = triggered(rule).stream()
                .filter(finding -> finding.rule().equals(rule.id()))
                .findFirst()
                .orElseThrow();
        Waiver waiver = new Waiver(
                new WaiverId("WAIVED"),
                rule.id(),
                first.subjects(),
                "measured and found good",
                "A. Example",
                "2025-01-31");
        List<Finding> after = findings(harness.with(waiver));
        assertEquals(
                1,
                after.stream().filter(finding -> finding.waiver().isPresent()).count());
        assertEquals(
                Optional.of(waiver),
                after.stream()
                        .filter(finding -> finding.rule().equals(rule.id())
                                && finding.subjects().equals(first.subjects()))
                        .findFirst()
                        .flatMap(Finding::waiver));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void itsExamplesStandInTheCanonicalLayout(RuleInfo rule) throws Exception {
        for (String which : List.of("triggers", "nearly")) {
            Path file = Path.of("src/main/resources/org/ohmloom/review/examples", rule.id(), which + ".harness.json");
            assertEquals(HarnessText.write(HarnessFiles.read(file)), Files.readString(file), file::toString);
        }
    }

    @Test
    void anEmptyHarnessIsTheConcernOfNotCheckedAlone() {
        Harness empty = Harness.empty(
                TitleBlock.of("Empty", "EX-0"),
                new DesignRules(
                        "road-vehicle", 12, 0.05, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 25));
        List<Finding> findings = findings(empty);
        assertFalse(findings.isEmpty());
        findings.forEach(finding -> assertEquals("not-checked", finding.rule()));
        assertTrue(findings.stream().noneMatch(finding -> finding.severity() == Severity.ERROR));
    }
}
