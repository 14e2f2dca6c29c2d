package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Rule;
import org.ohmloom.review.Rules;
import org.ohmloom.review.StudyPart;
import org.ohmloom.review.StudyResults;
import org.ohmloom.size.JointChoice;

/** An analysis heard of stage by stage: each stage holds what it says it holds, and the last one is the whole. */
@BesideOthers
class StagesTest {

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "workboat"})
    void whatAStagedAnalysisEndsWithIsTheAnalysis(String name) {
        Analysis whole = AnalysedExamples.of(name);
        List<Analysis> stages = Collections.synchronizedList(new ArrayList<>());
        Analysis last = Analyst.analyse(whole.harness(), whole.evidence().tables(), Cancel.NEVER, stages::add);
        assertTrue(last.isWhole());
        assertEquals(whole.log().text(), last.log().text());
        assertTrue(whole.log().text().contains("I²R(T)"), "a square is written raised");
        assertFalse(whole.log().text().matches("(?s).*(A2s|I2t).*"), "a square is written raised");
        assertEquals(whole.findings(), last.findings());
        assertEquals(whole.totals(), last.totals());
        assertEquals(whole.ratings(), last.ratings());
        assertEquals(whole.conductors(), last.conductors());
        assertEquals(whole.devices(), last.devices());
        assertEquals(
                EnumSet.allOf(StudyPart.class), stages.get(0).pending(), "currents come before everything else does");
        for (Analysis stage : stages) {
            assertFalse(stage.isWhole());
            assertEquals(ready(whole, stage.evidence()), stage.findings(), "with " + stage.pending() + " pending");
            assertTrue(stage.evidence()
                    .solutions()
                    .keySet()
                    .containsAll(stage.harness().states().ids()));
        }
    }

    private static List<Finding> ready(Analysis whole, Evidence stage) {
        Set<String> ready = Rules.ALL.stream()
                .filter(stage::isReadyFor)
                .map(rule -> rule.info().id())
                .collect(Collectors.toSet());
        return whole.findings().stream()
                .filter(each -> ready.contains(each.rule()))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"faults", "rescue-pickup"})
    void aRuleLooksAtNoStudyThatItDoesNotName(String name) {
        Evidence evidence = AnalysedExamples.of(name).evidence();
        for (Rule rule : Rules.ALL) {
            assertEquals(
                    found(rule, evidence),
                    found(rule, only(evidence, rule.needs())),
                    rule.info().id());
        }
    }

    private static List<Finding> found(Rule rule, Evidence evidence) {
        List<Finding> found = new ArrayList<>();
        rule.review(evidence, found::add);
        return found;
    }

    private static Evidence only(Evidence all, Set<StudyPart> kept) {
        boolean sized = kept.contains(StudyPart.SIZES);
        Evidence chosen = sized ? all : all.with(new TreeMap<>(), JointChoice.NOT_ASKED, new TreeMap<>());
        return chosen.with(only(all.studies(), kept));
    }

    /** The results with everything empty that is not among these parts. */
    private static StudyResults only(StudyResults all, Set<StudyPart> kept) {
        StudyResults none = StudyResults.AWAITED;
        ReturnStudy returns = all.returns();
        return new StudyResults(
                kept.contains(StudyPart.ENVELOPE) ? all.envelope() : none.envelope(),
                kept.contains(StudyPart.STARTS) ? all.startUps() : none.startUps(),
                kept.contains(StudyPart.CHARGE) ? all.charge() : none.charge(),
                kept.contains(StudyPart.PROTECTION) ? all.protection() : none.protection(),
                new ReturnStudy(
                        part(kept, StudyPart.LOOPS, returns, ReturnStudy::grounds),
                        part(kept, StudyPart.LOOPS, returns, ReturnStudy::loops),
                        part(kept, StudyPart.OFFSETS, returns, ReturnStudy::offsets),
                        part(kept, StudyPart.SENSORS, returns, ReturnStudy::sensors),
                        part(kept, StudyPart.COUPLINGS, returns, ReturnStudy::couplings),
                        part(kept, StudyPart.LOST_RETURNS, returns, ReturnStudy::losses),
                        kept.size() > 1 ? returns.unjudged() : List.of()),
                kept.contains(StudyPart.BUNDLES) ? all.bundles() : none.bundles(),
                EnumSet.complementOf(kept.isEmpty() ? EnumSet.noneOf(StudyPart.class) : EnumSet.copyOf(kept)));
    }

    private static <T> List<T> part(
            Set<StudyPart> kept, StudyPart part, ReturnStudy study, Function<ReturnStudy, List<T>> list) {
        return kept.contains(part) ? list.apply(study) : List.of();
    }

    @Test
    void anAnalysisStoppedAfterAStageDoesNotGoOnToTheNext() {
        Harness harness = AnalysedExamples.of("teaching").harness();
        List<Analysis> heard = Collections.synchronizedList(new ArrayList<>());
        assertThrows(
                CancellationException.class,
                () -> Analyst.analyse(
                        harness,
                        AnalysedExamples.of("teaching").evidence().tables(),
                        () -> !heard.isEmpty(),
                        heard::add));
        assertEquals(1, heard.size());
    }
}
