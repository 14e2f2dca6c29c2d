package org.ohmloom.workbench.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.Examples;
import org.ohmloom.workbench.sheet.SheetTable;

/** Renaming by a pattern, seen before it is done. */
class RenamePaneTest {

    @Test
    void thePatternIsTriedAsItIsTyped() throws Exception {
        Harness harness = Examples.open("teaching").harness();
        List<ElementId> wires = List.copyOf(harness.wires().ids());
        Object[] answered = {Optional.empty()};
        RenamePane pane = OnEventThread.get(() -> new RenamePane(harness, wires, edit -> answered[0] = edit));
        OnEventThread.run(() -> {
            assertFalse(pane.renameButton().isEnabled(), "nothing changes yet");
            pane.patternField().setText("W{");
            assertTrue(pane.stateText().contains("partner"), pane.stateText());
            pane.patternField().setText("X1");
            assertFalse(pane.renameButton().isEnabled());
            pane.patternField().setText("{class}-{01}");
            assertTrue(pane.renameButton().isEnabled(), pane.stateText());
            pane.renameButton().doClick();
        });
        @SuppressWarnings("unchecked")
        Optional<Edit> edit = (Optional<Edit>) answered[0];
        Harness after = edit.orElseThrow().apply(harness);
        assertEquals(harness.wires().size(), after.wires().size());
        assertTrue(after.wires().has(new WireId("feed-01")));
    }

    /** W2 of a list sorted by its identities becomes the last: Tab goes on there. */
    @Test
    void tabAfterANewIdentityStaysWithTheRowItMoved() {
        Stage stage = new Stage().openExample("teaching");
        OnEventThread.run(() -> {
            SheetTable table = stage.view.lists().front();
            table.getRowSorter().toggleSortOrder(0);
            int row = table.convertRowIndexToView(table.sheet().rowOf("W2"));
            table.changeSelection(row, 0, false, false);
            table.editCellAt(row, 0);
            ((JTextField) table.getEditorComponent()).setText("ZZ9");
            table.getActionMap().get("selectNextColumnCell").actionPerformed(new ActionEvent(table, 0, ""));
            assertEquals(
                    table.getRowCount() - 1,
                    table.convertRowIndexToView(table.sheet().rowOf("ZZ9")));
            assertEquals(table.getRowCount() - 1, table.getSelectedRow());
            assertEquals(1, table.getColumnModel().getSelectionModel().getLeadSelectionIndex());
        });
    }
}
