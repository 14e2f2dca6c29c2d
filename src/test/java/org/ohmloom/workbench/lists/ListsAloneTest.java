package org.ohmloom.workbench.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.sheet.Adding;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.SheetTable;

/** A harness made in the lists, without a layout; and what can be done with rows besides typing. */
class ListsAloneTest {

    private final Stage stage = new Stage().openExample("teaching");
    private final ListsPane lists = stage.view.lists();

    private Harness harness() {
        return stage.desk().harness().orElseThrow();
    }

    private void add(String list, String kind) {
        OnEventThread.run(() -> {
            lists.showList(list);
            Adding adding = lists.frontSheet().adds().stream()
                    .filter(each -> each.words().equals(kind))
                    .findFirst()
                    .orElseThrow();
            lists.add(adding);
        });
    }

    private static int column(SheetTable table, String title) {
        return IntStream.range(0, table.getColumnCount())
                .filter(k -> table.getColumnName(k).replaceAll(" \\(.*", "").equals(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no column " + title));
    }

    private static int row(SheetTable table, String id) {
        return IntStream.range(0, table.getRowCount())
                .filter(k -> String.valueOf(table.getValueAt(k, 0)).equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row " + id));
    }

    private void type(String list, String id, String title, String typed) {
        OnEventThread.run(() -> {
            lists.showList(list);
            SheetTable table = lists.front();
            table.setValueAt(typed, row(table, id), column(table, title));
        });
    }

    @Test
    void aLampIsWiredInTheListsAloneAndGetsItsCurrent() {
        add("Loads", "Heater or other resistance");
        type("Loads", "R1", "Name", "step light");
        type("Loads", "R1", "Rated at", "12 V");
        type("Loads", "R1", "Rated", "2,5");
        add("Wires", "Wire");
        add("Wires", "Wire");
        type("Wires", "W9", "From", "sp1");
        type("Wires", "W9", "To", "R1.+");
        type("Wires", "W9", "Conductor", "1,5");
        type("Wires", "W9", "Length", "2 m");
        type("Wires", "W10", "From", "R1.-");
        type("Wires", "W10", "To", "G2");
        type("Wires", "W10", "Carries", "return");
        type("Wires", "W10", "Colour", "bk");
        type("Wires", "W10", "Conductor", "1.5 mm2");
        type("Wires", "W10", "Length", "2");
        add("States", "State");
        type("States", "state-1", "Name", "step light only");
        assertEquals(
                "step light", harness().components().get(new ComponentId("R1")).name());
        assertEquals("SP1", harness().wires().get(new WireId("W9")).from().text());
        assertEquals(
                "BK",
                harness().wires().get(new WireId("W10")).colour().orElseThrow().text());
        assertEquals("R1.-", harness().wires().get(new WireId("W10")).from().text());
        stage.awaitResults();
        // State "Heater alone", note N-9 of the example: shared 56.655 milliohm, heater branch 2438.654 milliohm. The
        // lamp lies
        // beside the heater: 12 V / 2.5 A, 2 x 2 m of 1.5 mm2 at 12.7 milliohm per metre, joint 0.5 milliohm = 4851.3
        // milliohm.
        double heaterOhms = 2.438654;
        double lampOhms = 12 / 2.5 + 2 * 2 * 0.0127 + 0.0005;
        double bothOhms = heaterOhms * lampOhms / (heaterOhms + lampOhms);
        double lampAmps = 12.6 / (0.056655 + bothOhms) * bothOhms / lampOhms;
        assertEquals(2.5096, lampAmps, 0.00005);
        // The wires are a few kelvin warmer than those of the note and the row: 0.001 A.
        OnEventThread.run(() -> {
            stage.desk().choose(Optional.of(new StateId("heater-only")));
            lists.showList("Loads");
            SheetTable table = lists.front();
            CellText current = (CellText) table.getValueAt(row(table, "R1"), column(table, "Current"));
            assertEquals(lampAmps, Double.parseDouble(current.exact()), 0.001);
        });
    }

    @Test
    void aConnectorIsGivenCavitiesAndPluggedIntoAComponent() {
        add("Connectors", "Connector");
        add("Components", "Control unit");
        type("Connectors", "X3", "Mates with", "U1");
        type("Connectors", "X3", "Cavities", "2");
        type("Cavities", "X3", "Contact", "CT-T");
        assertEquals(
                List.of(Optional.of("1"), Optional.of("2")),
                harness().connectors().get(new ConnectorId("X3")).cavities().stream()
                        .map(cavity -> cavity.terminal())
                        .toList());
    }

    @Test
    void rowsAreTakenOutWithWhatCannotBeWithoutThem() {
        OnEventThread.run(() -> {
            lists.showList("Splices, grounds");
            stage.desk().select(Selection.of(List.of("G2")));
            stage.view.book().get("take-out").run();
        });
        assertTrue(harness().element("G2").isEmpty());
        OnEventThread.run(() -> stage.view.book().get("undo").run());
        assertTrue(harness().element("G2").isPresent());
    }

    @Test
    void anotherOfTheSelectedRowsIsSelectedAfterwards() {
        OnEventThread.run(() -> {
            stage.desk().select(Selection.of(List.of("W3")));
            stage.view.book().get("copy-rows").run();
            assertEquals(List.of("W9"), stage.desk().selection().ids());
            assertEquals(
                    harness().wires().get(new WireId("W3")).gauge(),
                    harness().wires().get(new WireId("W9")).gauge());
        });
    }

    private static List<String> identities(SheetTable table) {
        return IntStream.range(0, table.getRowCount())
                .mapToObj(k -> String.valueOf(table.getValueAt(k, 0)))
                .toList();
    }

    private static String focused(SheetTable table) {
        int row = table.getSelectionModel().getLeadSelectionIndex();
        int column = table.getColumnModel().getSelectionModel().getLeadSelectionIndex();
        return row < 0 || column < 0 ? "nothing" : table.getColumnName(column) + " " + table.getValueAt(row, 0);
    }

    @Test
    void whatIsAddedHasTheFocusAndIsTypedOverWhateverTheFilterHides() {
        OnEventThread.run(() -> {
            lists.showList("Contacts");
            lists.filterField().setText("EX-T28");
        });
        add("Contacts", "Contact");
        OnEventThread.run(() -> {
            SheetTable table = lists.front();
            assertEquals("", lists.filterField().getText());
            assertEquals("Contact CT1", focused(table));
            assertEquals(List.of("CT1"), stage.desk().selection().ids());
        });
    }

    @Test
    void aRowKeepsItsPlaceUnderAnotherIdentityUntilTheListIsLookedAtAnew() {
        add("Parts", "Part");
        OnEventThread.run(() -> {
            SheetTable table = lists.front();
            List<String> before = identities(table);
            int place = table.getSelectedRow();
            String old = before.get(place);
            assertTrue(table.editCellAt(place, 0));
            ((JTextField) table.getEditorComponent()).setText("ZZ-1");
            assertTrue(table.commit());
            assertEquals(place, identities(table).indexOf("ZZ-1"), "typed where " + old + " was");
            assertEquals("Part ZZ-1", focused(table));
            assertEquals(List.of("ZZ-1"), stage.desk().selection().ids());
            lists.showList("Wires");
            lists.showList("Parts");
            assertEquals(before.size() - 1, identities(table).indexOf("ZZ-1"), "last by its identity");
        });
    }

    @Test
    void aValueIsFilledDownAsOneStep() {
        OnEventThread.run(() -> {
            lists.showList("Wires");
            SheetTable table = lists.front();
            table.setRowSelectionInterval(0, 2);
            table.getColumnModel().getSelectionModel().setSelectionInterval(5, 5);
            String first = String.valueOf(table.getValueAt(0, 5));
            stage.view.book().get("fill-down").run();
            assertEquals(first, String.valueOf(table.getValueAt(2, 5)));
        });
    }
}
