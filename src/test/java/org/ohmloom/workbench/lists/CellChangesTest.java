package org.ohmloom.workbench.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Part;
import org.ohmloom.model.PartId;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.sheet.CellChanges;
import org.ohmloom.workbench.sheet.SheetTable;

/** Blocks pasted from a spreadsheet: looked at first, told cell by cell, one step. */
class CellChangesTest {

    private static final int CONDUCTOR = 3;

    private final Stage stage = new Stage().openExample("teaching");
    private final SheetTable wires = OnEventThread.get(() -> stage.view.lists().front());
    private CellChanges asked = new CellChanges("", List.of());

    private void paste(int row, int column, String block, boolean agree) {
        OnEventThread.run(() -> {
            wires.previewBy((owner, changes) -> {
                asked = changes;
                return agree ? changes.edit() : Optional.empty();
            });
            wires.changeSelection(row, column, false, false);
            wires.getTransferHandler()
                    .importData(new TransferHandler.TransferSupport(wires, new StringSelection(block)));
        });
    }

    private Optional<Gauge> gauge(String wire) {
        return stage.desk()
                .harness()
                .orElseThrow()
                .wires()
                .get(new WireId(wire))
                .gauge();
    }

    @Test
    void aBlockIsShownCellByCellBeforeAnythingChanges() {
        Optional<Gauge> before = gauge("W1");
        paste(0, CONDUCTOR, "10 mm2\t2,5\nfat\t0.2 m\n", false);
        assertEquals(before, gauge("W1"));
        assertEquals(
                List.of("W1 Conductor", "W1 Length", "W2 Conductor", "W2 Length"),
                asked.cells().stream()
                        .map(cell -> cell.row() + " " + cell.column())
                        .toList());
        assertTrue(
                asked.cells().get(2).problem().contains("'fat'"),
                asked.cells().get(2).problem());
        assertEquals("0.15 m", asked.cells().get(1).before());
    }

    @Test
    void whatFitsIsPastedAsOneStepWhenAPersonSaysSo() {
        paste(0, CONDUCTOR, "10 mm2\nfat\n10 mm2\n", true);
        assertEquals(Optional.of(Gauge.metric(10)), gauge("W1"));
        assertEquals(Optional.of(Gauge.metric(10)), gauge("W3"));
        OnEventThread.run(() -> stage.view.book().get("undo").run());
        assertTrue(OnEventThread.get(
                () -> !stage.desk().document().orElseThrow().session().isChanged()));
    }

    @Test
    void oneCellGoesIntoEverySelectedRow() {
        OnEventThread.run(() -> {
            wires.previewBy((owner, changes) -> changes.edit());
            wires.setRowSelectionInterval(0, 2);
            wires.getColumnModel().getSelectionModel().setSelectionInterval(CONDUCTOR, CONDUCTOR);
            wires.getTransferHandler()
                    .importData(new TransferHandler.TransferSupport(wires, new StringSelection("16 mm2\n")));
        });
        for (String wire : List.of("W1", "W2", "W3")) {
            assertEquals(Optional.of(Gauge.metric(16)), gauge(wire));
        }
    }

    @Test
    void twoCellsOfOneRowBothStay() {
        // supplier and order number of one part, pasted side by side
        SheetTable parts = OnEventThread.get(() -> {
            stage.view.lists().showList("Parts");
            return stage.view.lists().front();
        });
        OnEventThread.run(() -> {
            parts.previewBy((owner, changes) -> changes.edit());
            parts.changeSelection(0, 3, false, false);
            parts.getTransferHandler()
                    .importData(
                            new TransferHandler.TransferSupport(parts, new StringSelection("Example stores\t4711\n")));
        });
        String first = OnEventThread.get(() -> String.valueOf(parts.getValueAt(0, 0)));
        Part part = stage.desk().harness().orElseThrow().parts().get(new PartId(first));
        assertEquals(Optional.of("Example stores"), part.supplier());
        assertEquals(Optional.of("4711"), part.orderNumber());
    }

    @Test
    void whatIsCopiedCarriesEveryDigitAndPastesAsNoChange() throws Exception {
        String[] copied = {""};
        OnEventThread.run(() -> {
            wires.setRowSelectionInterval(0, 7);
            Clipboard clipboard = new Clipboard("test");
            wires.getTransferHandler().exportToClipboard(wires, clipboard, TransferHandler.COPY);
            try {
                copied[0] = (String) clipboard.getContents(this).getTransferData(DataFlavor.stringFlavor);
            } catch (UnsupportedFlavorException | IOException failed) {
                throw new AssertionError(failed);
            }
        });
        assertEquals(8, copied[0].lines().count());
        // one cell with more digits than the three shown: the drop in full
        String drop = copied[0].lines().findFirst().orElseThrow().split("\t")[8];
        assertTrue(drop.length() > 6, drop);
    }
}
