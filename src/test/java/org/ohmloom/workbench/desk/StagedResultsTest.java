package org.ohmloom.workbench.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.review.StudyPart;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.words.TypedEdits;

/** Results that arrive stage by stage: what is not there yet is shown as it was, and marked. */
class StagedResultsTest {

    private static final Set<StudyPart> PROTECTION = Set.of(StudyPart.PROTECTION);

    private final Analysis old = AnalysedExamples.of("teaching");
    private final Harness changed =
            TypedEdits.current(List.of(new ComponentId("P1")), "6 A").apply(old.harness());
    private final List<Analysis> stages = new ArrayList<>();
    private final Analysis whole = Analyst.analyse(changed, old.evidence().tables(), Cancel.NEVER, stages::add);

    @Test
    void aPendingStudyIsReadOffTheResultsBefore() {
        Results results = Results.of(Optional.of(old)).with(stages.get(0));
        assertSame(stages.get(0), results.latest().orElseThrow());
        assertSame(old, results.having(PROTECTION).orElseThrow());
        assertFalse(results.has(PROTECTION));
        assertEquals(2, results.newestFirst().size());
        assertSame(old, results.wholeOf(old.harness()).orElseThrow(), "an undo finds its results again");
    }

    @Test
    void wholeResultsNeedNoOlderOnes() {
        Results results = Results.of(Optional.of(old));
        for (Analysis stage : stages) {
            results = results.with(stage);
            assertTrue(results.newestFirst().size() <= 2, "a stage takes the place of the one before it");
        }
        results = results.with(whole);
        assertEquals(List.of(whole), results.newestFirst());
        assertTrue(results.findings(Optional.of(changed)).stream().noneMatch(Results.Standing::again));
    }

    @Test
    void findingsThatWaitForAStudyAreOldOnesAndMarked() {
        Analysis faults = AnalysedExamples.of("faults");
        Results results = Results.of(Optional.of(faults)).with(stages.get(0));
        List<Results.Standing> findings = results.findings(Optional.of(changed));
        Set<String> ready =
                stages.get(0).findings().stream().map(each -> each.rule()).collect(Collectors.toSet());
        assertTrue(findings.stream().anyMatch(each -> each.finding().rule().equals("fault-not-cleared")));
        findings.forEach(each -> assertEquals(
                !ready.contains(each.finding().rule()),
                each.again(),
                each.finding().rule()));
    }

    @Test
    void theDeskSaysWhatIsStillWorkedOutAndTakesBackAnUndoneEditAtOnce() {
        Stage stage = new Stage();
        stage.openExample("teaching");
        Edit edit = TypedEdits.current(List.of(new ComponentId("P1")), "6 A");
        OnEventThread.run(() -> {
            Harness before = stage.desk().harness().orElseThrow();
            stage.desk().apply(edit);
            assertFalse(stage.desk().isWhole());
            stage.view.book().get("undo").run();
            assertSame(before, stage.desk().harness().orElseThrow());
            assertTrue(stage.desk().isWhole(), "its results are still there");
            assertEquals(CalculationStatus.UP_TO_DATE, stage.desk().status());
        });
    }

    @Test
    void theStatusNamesTwoStudiesAndCountsTheRest() {
        assertEquals(
                "Working out starts, protection",
                CalculationStatus.studying(Set.of(StudyPart.STARTS, StudyPart.PROTECTION))
                        .sentence());
        assertEquals(
                "Working out sizes, worst combinations and " + (StudyPart.values().length - 2) + " more",
                CalculationStatus.studying(Set.of(StudyPart.values())).sentence());
    }
}
