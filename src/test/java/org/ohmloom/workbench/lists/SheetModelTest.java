package org.ohmloom.workbench.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.Session;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.desk.Examples;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.BlockPaste;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.SheetModel;
import org.ohmloom.workbench.words.TypedEdits;

/** The list of wires of the teaching harness, edited without a screen. */
class SheetModelTest {

    private static final int CONDUCTOR = 3;
    private static final int LENGTH = 4;

    private Session session;
    private SheetModel<WireSheet.Row> model;

    @BeforeEach
    void openTeaching() throws HarnessFileException {
        session = Examples.open("teaching").session();
        model = new SheetModel<>(new WireSheet(), session::apply);
        session.listen((before, after) -> show());
        show();
    }

    private void show() {
        Harness harness = session.current();
        Readout readout = new Readout(harness, Optional.empty(), Optional.empty());
        model.show(new WireSheet().rows(readout), readout.isCurrent());
    }

    @Test
    void unitsStandInTheHeadsAndNotInTheCells() {
        assertEquals("Length (m)", model.getColumnName(LENGTH));
        assertEquals("0.15", model.getValueAt(model.rowOf("W1"), LENGTH).text());
    }

    @Test
    void aCellTakesASizeWithAComma() {
        model.setValueAt("2,5 mm2", model.rowOf("W4"), CONDUCTOR);
        assertEquals(Optional.of(Gauge.metric(2.5)), gauge("W4"));
        assertEquals(
                Optional.of("Set conductor of W4 to 2.5 mm2"),
                session.undoLabel().map(Text::english));
        session.undo();
        assertEquals(Optional.of(Gauge.metric(1.5)), gauge("W4"));
    }

    @Test
    void severalRowsChangeAsOneStep() {
        model.type(List.of(model.rowOf("W4"), model.rowOf("W5")), CONDUCTOR, "4");
        assertEquals(Optional.of(Gauge.metric(4)), gauge("W4"));
        assertEquals(Optional.of(Gauge.metric(4)), gauge("W5"));
        session.undo();
        assertEquals(Optional.of(Gauge.metric(1.5)), gauge("W5"));
        assertFalse(session.isChanged());
    }

    @Test
    void aBlockIsPastedAsOneStepOrNotAtAll() {
        int row = model.rowOf("W4");
        List<Integer> rows = List.of(row, row + 1);
        List<Integer> columns = List.of(CONDUCTOR, LENGTH);
        session.apply(BlockPaste.of(model, rows, columns, "2,5 mm2\t1,2\r\n14 AWG\t10 ft\r\n"));
        assertEquals(Optional.of(Gauge.awg(14)), gauge("W5"));
        assertEquals(
                3.048,
                session.current().wires().get(new WireId("W5")).lengthMetres().orElseThrow(),
                1e-12);
        session.undo();
        assertFalse(session.isChanged());

        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> BlockPaste.of(model, rows, columns, "2,5 mm2\tlong\nfat\t1"));
        assertTrue(refused.getMessage().contains("W4 Length"), refused.getMessage());
        assertTrue(refused.getMessage().contains("W5 Conductor"), refused.getMessage());
        assertFalse(session.isChanged());
    }

    @Test
    void rowsKeepTheirPlacesWhileOnlyNumbersChange() {
        List<String> events = new ArrayList<>();
        model.addTableModelListener(event -> events.add(
                event.getLastRow() == Integer.MAX_VALUE ? "everything" : "rows up to " + event.getLastRow()));
        Edit longer = TypedEdits.length(List.of(new WireId("W1")), "0.2");
        session.apply(longer);
        assertEquals(List.of("rows up to 7"), events);
    }

    @Test
    void emptyCellsSortLastAndNumbersByValue() {
        CellText two = CellText.of(2);
        CellText ten = CellText.of(10);
        assertTrue(two.compareTo(ten) < 0);
        assertTrue(CellText.EMPTY.compareTo(CellText.of("W1")) > 0);
        assertTrue(CellText.of("W2").compareTo(CellText.of("W10")) < 0);
    }

    private Optional<Gauge> gauge(String wire) {
        return session.current().wires().get(new WireId(wire)).gauge();
    }
}
