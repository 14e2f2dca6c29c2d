package org.ohmloom.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;

/** The shipped examples of the rules, as something a person reads, and what their findings say. */
@BesideOthers
class RuleExamplesTest {

    static Stream<String> rules() {
        return Rules.ALL.stream().map(rule -> rule.info().id());
    }

    @ParameterizedTest
    @MethodSource("rules")
    void whatNearlyBreaksARuleIsOtherwiseSoundToo(String rule) {
        assertEquals(List.of(), Examined.findings(Examined.within(rule)));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void anExampleSaysWhatItShowsInOneSentenceAndThatItIsInvented(String rule) {
        for (Harness example : List.of(Examined.breaking(rule), Examined.within(rule))) {
            String sentence = RuleExamples.sentence(example);
            assertTrue(sentence.endsWith("."), sentence);
            assertTrue(sentence.length() <= Sentence.MOST_CHARACTERS, sentence);
            assertTrue(
                    example.notes().all().stream().anyMatch(note -> note.text().startsWith("Invented scenario")));
        }
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aMessageIsOneShortSentenceThatNamesASubject(String rule) {
        for (Finding finding : Examined.findings(Examined.breaking(rule))) {
            MessageChecks.check(finding);
            assertFalse(finding.subjects().isEmpty(), finding::message);
            assertTrue(finding.highlight().containsAll(finding.subjects()), finding::message);
            assertTrue(
                    finding.subjects().stream().anyMatch(finding.message()::contains),
                    () -> finding.message() + " names none of " + finding.subjects());
        }
    }

    @ParameterizedTest
    @MethodSource("rules")
    void theSameHarnessHasTheSameFindingsInTheSameOrder(String rule) {
        assertEquals(Examined.findings(Examined.breaking(rule)), Examined.findings(Examined.breaking(rule)));
    }

    @Test
    void theRulesWithAnObviousFixOfferOne() {
        Set<String> fixed = rules().filter(rule -> Examined.findings(Examined.breaking(rule), rule).stream()
                        .anyMatch(finding -> finding.fix().isPresent()))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(
                Set.of(
                        "bus-beyond-limits",
                        "bus-message-late",
                        "bus-not-joined",
                        "bus-pair-open",
                        "bus-termination",
                        "channel-miswired",
                        "channel-name-unfit",
                        "conductor-not-protected",
                        "conductor-over-ampacity",
                        "covering-does-not-fit",
                        "covering-too-hot",
                        "device-exceeds-conductor",
                        "device-overloaded",
                        "drop-over-limit",
                        "fault-not-cleared",
                        "pin-clash",
                        "reading-implausible",
                        "shared-pin-over-limit",
                        "splice-misplaced",
                        "start-opens-device",
                        "update-rate-unfit",
                        "voltage-rating-exceeded",
                        "wire-not-routable"),
                fixed);
    }

    @Test
    void titlesAndNumbersAreTheirOwnAndNoExampleIsLarge() {
        Set<String> titles = new HashSet<>();
        Set<String> numbers = new HashSet<>();
        rules().flatMap(rule -> Stream.of(Examined.breaking(rule), Examined.within(rule)))
                .forEach(example -> {
                    titles.add(example.titleBlock().title());
                    numbers.add(example.titleBlock().number());
                    assertTrue(
                            example.wires().size() <= 13, example.titleBlock().title());
                });
        assertEquals(2 * Rules.ALL.size(), titles.size());
        assertEquals(2 * Rules.ALL.size(), numbers.size());
    }

    @Test
    void anUnknownRuleIsRefusedByName() {
        RuleInfo unknown = new RuleInfo("no-such-rule", Severity.NOTE);
        String message = assertThrows(IllegalArgumentException.class, () -> RuleExamples.triggers(unknown))
                .getMessage();
        assertTrue(message.contains("no-such-rule"), message);
    }
}
