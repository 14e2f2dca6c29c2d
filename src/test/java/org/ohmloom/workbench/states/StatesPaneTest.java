package org.ohmloom.workbench.states;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Setting;
import org.ohmloom.model.StateId;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;

/** Duties typed into the matrix, and two states held side by side. */
class StatesPaneTest {

    private final Stage stage = new Stage().openExample("teaching");
    private final StatesPane pane = OnEventThread.get(() -> {
        stage.view.viewTabs().showStudy(StatesPane.KEY);
        return (StatesPane) stage.view.viewTabs().study(StatesPane.KEY);
    });

    private int row(String what) {
        return IntStream.range(0, pane.matrix().getRowCount())
                .filter(k -> pane.matrix().getValueAt(k, 0).equals(what))
                .findFirst()
                .orElseThrow();
    }

    private Optional<Setting> setting(String state, String load) {
        return stage.desk()
                .harness()
                .orElseThrow()
                .states()
                .get(new StateId(state))
                .setting(new ComponentId(load));
    }

    @Test
    void aDutyIsTypedIntoEveryStateAtOnce() {
        OnEventThread.run(() -> {
            MatrixTable table = pane.matrix();
            int row = row("H1");
            table.setRowSelectionInterval(row, row);
            table.setColumnSelectionInterval(MatrixModel.FIRST, table.getColumnCount() - 1);
            table.typeAll("40 %");
        });
        for (String state : new String[] {"both", "heater-only", "off"}) {
            assertEquals(Optional.of(Setting.duty(0.4)), setting(state, "H1"));
        }
        OnEventThread.run(() -> stage.view.book().get("undo").run());
        assertTrue(OnEventThread.get(
                () -> !stage.desk().document().orElseThrow().session().isChanged()));
    }

    @Test
    void whatIsNoDutyIsSaidAndNothingChanges() {
        OnEventThread.run(() -> {
            MatrixTable table = pane.matrix();
            table.changeSelection(row("H1"), MatrixModel.FIRST, false, false);
            table.typeAll("warm");
        });
        assertTrue(pane.hintText().contains("'warm' is no setting"), pane.hintText());
    }

    @Test
    void aBlockIsPastedWithItsProblemsByCell() {
        OnEventThread.run(() -> {
            MatrixTable table = pane.matrix();
            table.previewBy((owner, changes) -> {
                assertEquals(2, changes.cells().size());
                assertTrue(changes.cells().get(1).problem().contains("no setting"));
                return changes.edit();
            });
            table.changeSelection(row("H1"), MatrixModel.FIRST, false, false);
            assertTrue(table.paste("30 %\twarm\n"));
        });
        assertEquals(Optional.of(Setting.duty(0.3)), setting("both", "H1"));
    }

    @Test
    void twoStatesStandSideBySideWithWhatTheyComeTo() {
        OnEventThread.run(() -> {
            pane.compareBox().doClick();
            pane.differencesBox().doClick();
            assertEquals(MatrixModel.FIRST + 2, pane.matrix().getColumnCount());
            for (int row = 0; row < pane.matrix().getRowCount(); row++) {
                assertTrue(!pane.matrix()
                        .getValueAt(row, MatrixModel.FIRST)
                        .equals(pane.matrix().getValueAt(row, MatrixModel.FIRST + 1)));
            }
            // "both" runs heater and pump, "heater-only" the heater alone: less from the source
            String difference = String.valueOf(pane.results().getValueAt(0, 4));
            assertTrue(difference.startsWith("−"), difference);
        });
    }
}
