package org.ohmloom.workbench.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.EventQueue;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.revision.ElementChanges;
import org.ohmloom.analysis.revision.FieldChange;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Waiver;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;
import org.ohmloom.tables.WireTables;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.Results;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.words.TradeWords;

/** Looking at fixes first, fixing all of a kind, accepting with a reason; on the example of faults. */
class FindingCuresTest {

    private final Stage stage = new Stage().openExample("faults");

    private List<Finding> findings() {
        return stage.desk().findings().stream().map(Results.Standing::finding).toList();
    }

    @Test
    void allOfAKindAreFixedAsOneStepAndTheChangesAreShownFieldByField() {
        String rule = findings().stream()
                .filter(each -> each.fix().isPresent() && each.isOpen())
                .map(Finding::rule)
                .findFirst()
                .orElseThrow();
        List<Finding> alike = findings().stream()
                .filter(each -> each.rule().equals(rule) && each.fix().isPresent())
                .toList();
        OnEventThread.run(() -> stage.desk().select(Selection.of(alike.get(0))));
        Harness before = stage.desk().harness().orElseThrow();
        Edit edit = OnEventThread.get(() -> Fixes.ofAKind(stage.desk())).orElseThrow();
        List<FieldChange> changes = ElementChanges.between(before, edit.apply(before)).stream()
                .flatMap(each -> each.fields().stream())
                .toList();
        assertTrue(changes.size() >= alike.size(), changes.toString());
        assertEquals(
                "Fix " + alike.size() + ": " + TradeWords.rule(rule),
                edit.label().english());
        OnEventThread.run(() -> {
            stage.desk().apply(edit);
            stage.view.book().get("undo").run();
        });
        assertTrue(OnEventThread.get(
                () -> !stage.desk().document().orElseThrow().session().isChanged()));
    }

    @Test
    void theFixIsTriedOnACopyAndAppliedOnlyWhenAPersonSaysSo() {
        Finding fixable = findings().stream()
                .filter(each -> each.fix().isPresent() && each.isOpen())
                .findFirst()
                .orElseThrow();
        OnEventThread.run(() -> stage.desk().select(Selection.of(fixable)));
        Harness before = stage.desk().harness().orElseThrow();
        FixPane pane = OnEventThread.get(() -> new FixPane(
                stage.desk(),
                fixable.fix().orElseThrow(),
                (question, cancel, soFar) -> Analyst.analyse(question.harness(), WireTables.bundled(), cancel, soFar),
                EventQueue::invokeLater,
                () -> {}));
        OnEventThread.run(pane::start);
        OnEventThread.await("the copy", () -> !pane.effectText().startsWith("Working"));
        assertTrue(pane.changes().getRowCount() >= 1);
        assertTrue(OnEventThread.get(pane::effectText).contains("finding"), pane.effectText());
        assertEquals(before, stage.desk().harness().orElseThrow());
        OnEventThread.run(() -> pane.applyButton().doClick());
        assertFalse(before.equals(stage.desk().harness().orElseThrow()));
    }

    @Test
    void aFindingIsAcceptedWithItsReasonAndOpenedAgain() {
        Finding finding =
                findings().stream().filter(Finding::isOpen).findFirst().orElseThrow();
        OnEventThread.run(() -> stage.desk().select(Selection.of(finding)));
        Clock clock = Clock.fixed(Instant.parse("2026-11-30T06:00:00Z"), ZoneOffset.UTC);
        OnEventThread.run(() -> {
            AcceptPane pane = new AcceptPane(Fixes.alike(stage.desk()), clock, stage.desk()::apply, () -> {});
            assertFalse(pane.acceptButton().isEnabled(), "without a reason nothing is accepted");
            pane.reasonField().setText("measured on the vehicle");
            pane.acceptButton().doClick();
        });
        Waiver waiver = stage.desk().harness().orElseThrow().waivers().all().stream()
                .filter(each -> each.reason().equals("measured on the vehicle"))
                .findFirst()
                .orElseThrow();
        assertEquals("2026-11-30", waiver.date());
        stage.awaitResults();
        Finding accepted = findings().stream()
                .filter(each -> Fixes.isSame(each, finding))
                .findFirst()
                .orElseThrow();
        assertEquals(Optional.of(waiver), accepted.waiver());
        OnEventThread.run(() -> {
            stage.desk().select(Selection.of(accepted));
            stage.view.book().get("reopen-finding").run();
        });
        assertFalse(stage.desk().harness().orElseThrow().waivers().has(waiver.id()));
    }

    @Test
    void findingsAreFilteredByWordsAndGroupedByRule() {
        List<Results.Standing> all = stage.desk().findings();
        Finding first = all.get(0).finding();
        List<FindingsModel.Row> rows = FindingsModel.rows(
                all, EnumSet.allOf(Severity.class), first.rule().toUpperCase(Locale.ROOT), FindingsModel.Grouping.RULE);
        assertEquals(TradeWords.rule(first.rule()), rows.get(0).title());
        assertTrue(rows.stream().flatMap(row -> row.finding().stream()).allMatch(each -> (each.rule() + each.message())
                .contains(first.rule())));
        List<FindingsModel.Row> byRule =
                FindingsModel.rows(all, EnumSet.allOf(Severity.class), "", FindingsModel.Grouping.RULE);
        assertEquals(all.size(), byRule.stream().filter(row -> !row.isHeading()).count());
        assertEquals(
                all.stream().map(each -> each.finding().rule()).distinct().count(),
                byRule.stream().filter(FindingsModel.Row::isHeading).count());
    }
}
