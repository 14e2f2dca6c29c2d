package org.ohmloom.workbench.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.ohmloom.draw.study.MadeReturns;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.StateId;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.desk.Selection;

/** The tab of the return paths: its lists, its picture, the layout and the rest of the window show the same. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReturnsPaneTest {

    private final Stage stage = new Stage(results -> MadeReturns.in(results, 1)).openExample("faults");

    @Test
    void aGroundPointChosenInItsListIsChosenEverywhereAndTheOtherWayRound() {
        StudyPane<?> grounds = show("returns-grounds");
        String first = OnEventThread.get(() -> {
            grounds.table().setRowSelectionInterval(0, 0);
            return stage.desk().selection().lead().orElseThrow();
        });
        assertTrue(stage.desk().harness().orElseThrow().grounds().has(new GroundPointId(first)));
        int row = OnEventThread.get(() -> {
            stage.desk()
                    .select(Selection.of(
                            List.of(grounds.table().getValueAt(1, 0).toString())));
            return grounds.table().getSelectedRow();
        });
        assertEquals(1, row);
    }

    @Test
    void aLoopChosenInItsListLightsUpOnTheLayoutMemberByMember() {
        StudyPane<?> loops = show("returns-loops");
        Selection onLayout = OnEventThread.get(() -> {
            loops.table().setRowSelectionInterval(0, 0);
            return stage.view.layoutPane().canvas().selection();
        });
        LoopStudy.Row row = OnEventThread.get(() ->
                new LoopStudy().rows(Readout.of(stage.desk()).orElseThrow()).get(0));
        assertTrue(row.elements().size() > 1);
        assertEquals(row.elements().stream().map(id -> id.value()).toList(), onLayout.path());
        assertEquals(List.of(row.lead().value()), onLayout.ids());
    }

    @Test
    void aMemberChosenElsewhereLeadsToItsLoop() {
        StudyPane<?> loops = show("returns-loops");
        OnEventThread.run(() -> {
            LoopStudy study = new LoopStudy();
            Readout readout = Readout.of(stage.desk()).orElseThrow();
            LoopStudy.Row last = study.rows(readout).get(study.rows(readout).size() - 1);
            stage.desk().select(Selection.of(List.of(last.lead().value())));
            assertEquals(
                    last.lead().value(),
                    study.id(study.rows(readout).get(loops.table().getSelectedRow()))
                            .value());
            assertFalse(loops.stepsText().isBlank());
        });
    }

    @Test
    void theStateChosenAboveTheListsIsTheOneOfTheWholeWindow() {
        show("returns-offsets");
        StateId state = stage.desk().analysis().orElseThrow().states().get(0).id();
        OnEventThread.run(() -> stage.desk().choose(Optional.of(state)));
        boolean only = OnEventThread.get(() -> new OffsetStudy()
                .rows(Readout.of(stage.desk()).orElseThrow()).stream()
                        .allMatch(row -> row.offset().state().equals(state)));
        assertTrue(only);
        OnEventThread.run(() -> stage.desk().choose(Optional.empty()));
    }

    @Test
    void theTabIsReachedByItsCommandAndItsChartsSayWhatTheyShow() {
        OnEventThread.run(() -> stage.view.book().get("study-returns").run());
        assertTrue(OnEventThread.get(() -> stage.view.viewTabs().getSelectedComponent()
                == stage.view.viewTabs().returns()));
        for (StudyPane<?> pane : stage.view.viewTabs().returns().panes()) {
            show(pane.key());
            String description =
                    OnEventThread.get(() -> pane.chart().getAccessibleContext().getAccessibleDescription());
            assertTrue(description.length() > 20, pane.key() + ": " + description);
        }
    }

    private StudyPane<?> show(String key) {
        return OnEventThread.get(() -> {
            stage.view.viewTabs().showStudy(ReturnsPane.KEY);
            stage.view.viewTabs().returns().showList(key);
            return stage.view.viewTabs().returns().panes().stream()
                    .filter(pane -> pane.key().equals(key))
                    .findFirst()
                    .orElseThrow();
        });
    }
}
