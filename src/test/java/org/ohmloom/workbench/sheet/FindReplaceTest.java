package org.ohmloom.workbench.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.WireId;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;

/** A text found in the cells of a list and replaced where it can be typed. */
class FindReplaceTest {

    private final Stage stage = new Stage().openExample("teaching");

    @Test
    void everyCellThatCanBeTypedIsReplacedAndTheOthersStay() {
        OnEventThread.run(() -> {
            SheetTable table = stage.view.lists().front();
            table.previewBy((owner, changes) -> changes.edit());
            FindReplacePane pane = new FindReplacePane(table);
            pane.type("RD", "BU");
            List<CellChanges.Cell> cells = pane.plan().cells();
            assertTrue(!cells.isEmpty(), "a red wire is there");
            assertTrue(cells.stream().allMatch(cell -> cell.column().equals("Colour")), cells.toString());
            assertTrue(table.change(pane.plan()));
            assertTrue(
                    stage.desk().harness().orElseThrow().wires().all().stream().noneMatch(wire -> wire.colour()
                            .filter(colour -> colour.base().equals("RD"))
                            .isPresent()));
        });
    }

    @Test
    void anIdentityIsReplacedWithAllThatNamesIt() {
        OnEventThread.run(() -> {
            SheetTable table = stage.view.lists().front();
            table.previewBy((owner, changes) -> changes.edit());
            FindReplacePane pane = new FindReplacePane(table);
            pane.type("W8", "W80");
            assertEquals(1, pane.plan().cells().size());
            table.change(pane.plan());
            assertTrue(stage.desk().harness().orElseThrow().wires().has(new WireId("W80")));
            pane.findNext();
            assertEquals("Found W80", pane.stateText());
        });
    }
}
