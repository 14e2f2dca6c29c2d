package org.ohmloom.workbench.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.RenameElements;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.findings.FindingsModel;
import org.ohmloom.workbench.words.TypedEdits;

/** Editing the teaching harness: results follow, old ones are known to be old, views stay in step. */
class DeskTest {

    /** The notes of the harness give four digits. */
    private static final double HAND_WORKED = 5e-4;

    private final Stage stage = new Stage();

    @Test
    void resultsFollowAnEditAndAreOldUntilTheyDo() {
        stage.openExample("teaching");
        // Note 6 of the example: at the heater 11.9544 V, 4.9810 A x 2.4 ohm.
        assertEquals(11.9544, heaterVolts(), HAND_WORKED);
        OnEventThread.run(() -> {
            stage.desk().apply(TypedEdits.current(List.of(new ComponentId("P1")), "6 A"));
            assertFalse(stage.desk().isCurrent());
            assertEquals(CalculationStatus.CALCULATING, stage.desk().status());
            assertTrue(stage.desk().analysis().isPresent(), "old numbers stay in sight");
        });
        stage.awaitResults();
        // Three more amperes through the shared 56.7 milliohm take about 0.17 V x 2400 / 2495 from the heater.
        assertEquals(11.9544 - 3 * 0.0567 * 2400 / 2495, heaterVolts(), 5e-3);
        assertEquals(CalculationStatus.UP_TO_DATE, OnEventThread.get(() -> stage.desk()
                .status()));
        assertSame(
                OnEventThread.get(() -> stage.desk().harness().orElseThrow()),
                OnEventThread.get(() -> stage.desk().analysis().orElseThrow().harness()));
    }

    @Test
    void undoClearsTheStarAndBringsTheNumbersBack() {
        stage.openExample("teaching");
        OnEventThread.run(() -> {
            stage.desk().apply(TypedEdits.conductor(List.of(new WireId("W4")), "4"));
            assertEquals(
                    "Undo Set conductor of W4 to 4 mm²",
                    stage.view.book().get("undo").name());
            stage.view.book().get("undo").run();
            assertFalse(stage.desk().document().orElseThrow().session().isChanged());
            assertEquals(
                    "Redo Set conductor of W4 to 4 mm²",
                    stage.view.book().get("redo").name());
        });
        stage.awaitResults();
        assertEquals(11.9544, heaterVolts(), HAND_WORKED);
    }

    @Test
    void aStoppedCalculationLeavesTheOldNumbersMarked() {
        stage.openExample("teaching");
        OnEventThread.run(() -> {
            stage.desk().apply(TypedEdits.length(List.of(new WireId("W4")), "3"));
            stage.desk().stopCalculating();
            assertEquals(CalculationStatus.OUTDATED, stage.desk().status());
            assertTrue(stage.desk().analysis().isPresent());
        });
    }

    @Test
    void everyViewShowsWhatIsSelectedInOne() {
        stage.openExample("teaching");
        OnEventThread.run(() -> {
            stage.desk().select(Selection.of(List.of("H1")));
            assertEquals("Loads", stage.view.lists().front().sheet().column(0).title() + "s");
            assertEquals(1, stage.view.lists().front().getSelectedRowCount());
            assertEquals("H1", stage.view.inspector().inspection().orElseThrow().title());
            assertEquals(
                    List.of("H1"), stage.view.layoutPane().canvas().selection().ids());
        });
    }

    @Test
    void whatIsSelectedStaysSoUnderAnotherIdentity() {
        stage.openExample("teaching");
        OnEventThread.run(() -> {
            stage.desk().select(Selection.of(List.of("W1", "H1")));
            stage.desk().apply(new RenameElements(Map.of(new ComponentId("H1"), new ComponentId("R7"))));
            assertEquals(List.of("W1", "R7"), stage.desk().selection().ids());
            assertEquals("W1", stage.view.inspector().inspection().orElseThrow().title());
        });
    }

    @Test
    void aFindingShowsItsSubjectsAndItsFixIsOneStep() {
        stage.openExample("faults");
        OnEventThread.run(() -> {
            int fixable = -1;
            for (int k = 0; k < stage.view.findings().findings().getModel().getSize(); k++) {
                FindingsModel.Row row =
                        stage.view.findings().findings().getModel().getElementAt(k);
                if (fixable < 0
                        && row.finding().filter(each -> each.fix().isPresent()).isPresent()) {
                    fixable = k;
                }
            }
            stage.view.findings().findings().setSelectedIndex(fixable);
            Selection selection = stage.desk().selection();
            assertTrue(selection.finding().isPresent());
            assertEquals(selection.finding().get().subjects(), selection.ids());
            assertTrue(stage.view.book().get("apply-fix").isEnabled());
            stage.view.book().get("apply-fix").run();
            assertEquals(
                    selection.finding().get().fix().map(fix -> fix.label()),
                    stage.desk().document().orElseThrow().session().undoLabel());
        });
    }

    @Test
    void aStateThatIsGoneIsNotLookedAtAnyMore() {
        stage.openExample("teaching");
        OnEventThread.run(() -> {
            stage.desk().choose(Optional.of(new StateId("off")));
            stage.desk().apply(new Edit() {
                @Override
                public Text label() {
                    return Text.of("Remove state");
                }

                @Override
                public Harness apply(Harness before) {
                    return before.without(new StateId("off"));
                }
            });
            assertEquals(Optional.empty(), stage.desk().view().state());
        });
    }

    private double heaterVolts() {
        return OnEventThread.get(() -> stage.desk()
                .analysis()
                .orElseThrow()
                .solution(new StateId("both"))
                .orElseThrow()
                .loads()
                .get(new ComponentId("H1"))
                .volts());
    }
}
