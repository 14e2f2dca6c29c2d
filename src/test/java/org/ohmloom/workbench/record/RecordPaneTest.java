package org.ohmloom.workbench.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Reading;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.sheet.SheetTable;

/** The as-built record in the window: values typed into the list of tests, and taken in from a filled-in sheet. */
class RecordPaneTest {
    private static final int MEASURED = 3;
    private static final int VERDICT = 4;
    private static final int REPLACES = 8;

    private final Stage stage = new Stage();

    @BeforeEach
    void open() {
        stage.openExample("teaching");
        OnEventThread.run(() -> stage.view.viewTabs().showStudy(RecordPane.KEY));
        OnEventThread.run(() -> pane().showSerial("0001"));
    }

    private RecordPane pane() {
        return (RecordPane) stage.view.viewTabs().study(RecordPane.KEY);
    }

    private Harness harness() {
        return stage.desk().harness().orElseThrow();
    }

    /** Place of the row of a wire by itself in the list as it is shown. */
    private int row(String what, String where) {
        SheetTable table = pane().table();
        for (int row = 0; row < table.getRowCount(); row++) {
            if (table.getValueAt(row, 0).toString().equals(what)
                    && table.getValueAt(row, 1).toString().equals(where)) {
                return row;
            }
        }
        throw new AssertionError("no row " + what + " " + where);
    }

    private void type(String what, String where, int column, String text) {
        OnEventThread.run(() -> pane().table().setValueAt(text, row(what, where), column));
    }

    private String shown(String what, String where, int column) {
        return OnEventThread.get(
                () -> pane().table().getValueAt(row(what, where), column).toString());
    }

    @Test
    void aTypedValueIsAReadingOfTheSerialNumberAndIsJudgedAtOnce() {
        // W8: 0.5 m of 4 mm2 have 2.355 milliohm at 20 C, four wires add 1.
        type("Wire alone", "W8", MEASURED, "5");
        assertEquals("failed", shown("Wire alone", "W8", VERDICT));
        type("Wire alone", "W8", MEASURED, "2400 µΩ");
        assertEquals("passed", shown("Wire alone", "W8", VERDICT));
        Reading reading =
                OnEventThread.get(() -> harness().readings().all().iterator().next());
        assertEquals(new Measured.OfWire("W8", 0.0024), reading.measured());
        assertEquals(Optional.of("0001"), reading.serialNumber());
        assertTrue(reading.measuredAt().isPresent());

        OnEventThread.run(() -> stage.desk().document().orElseThrow().session().undo());
        assertEquals("failed", shown("Wire alone", "W8", VERDICT));
        type("Wire alone", "W8", MEASURED, "");
        assertTrue(OnEventThread.get(() -> harness().readings().isEmpty()));
    }

    @Test
    void everyBuiltHarnessHasARecordOfItsOwn() {
        type("Wire alone", "W8", MEASURED, "2.4");
        OnEventThread.run(() -> pane().showSerial("0002"));
        assertEquals("", shown("Wire alone", "W8", MEASURED));
        type("Wire alone", "W8", MEASURED, "2.5");
        assertEquals(2, OnEventThread.get(() -> harness().readings().size()));
        OnEventThread.run(() -> pane().showSerial("0001"));
        assertEquals("2.4 mΩ", shown("Wire alone", "W8", MEASURED));
    }

    @Test
    void aValueThatReplacesTheListedOneIsWhatIsCalculatedWith() {
        type("Wire alone", "W8", MEASURED, "3");
        type("Wire alone", "W8", REPLACES, "yes");
        stage.awaitResults();
        var rating = OnEventThread.get(
                () -> stage.desk().analysis().orElseThrow().ratings().get(new WireId("W8")));
        assertEquals(0.003 * (234.5 + rating.celsius()) / 254.5, rating.ohms(), 1e-12);
        assertTrue(OnEventThread.get(() -> pane().summaryText()).contains("1 reading: 1 passed"));
    }

    @Test
    void slipsAreRefusedWithWhatWouldBeRight() {
        assertTrue(assertThrows(
                        IllegalArgumentException.class, () -> RecordEdits.measured(new Measured.OfWire("W8", 0), "abc"))
                .getMessage()
                .contains("a resistance such as"));
        assertEquals(
                new Measured.Isolation("X1.1", 2e8, OptionalDouble.empty(), true),
                RecordEdits.measured(new Measured.Isolation("X1.1", 0, OptionalDouble.empty(), false), "> 200"));
        for (Measured measured : List.of(
                new Measured.OfWire("W8", 0.0024),
                new Measured.Isolation("X1.1", 2e8, OptionalDouble.empty(), true),
                new Measured.Pull("CT-T", Gauge.parse("1.5 mm2"), 155, OptionalDouble.of(5)),
                new Measured.Powered(
                        "H1", "both", OptionalDouble.of(11.8), OptionalDouble.of(0.42), OptionalDouble.empty()))) {
            assertEquals(measured, RecordEdits.measured(measured, RecordEdits.start(measured)));
        }
    }

    @Test
    void aFilledInSheetIsTakenInAsOneStep(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("values.csv");
        Files.writeString(file, "Wire;Measured mΩ\nW8;2,4\nW5;19,5\nW6;\n");
        stage.prompts.target = Optional.of(file);
        OnEventThread.run(() -> stage.view.book().get("take-in-values").run());
        OnEventThread.await("values", () -> harness().readings().size() == 2);
        assertEquals("19.5 mΩ", shown("Wire alone", "W5", MEASURED));
        OnEventThread.run(() -> stage.desk().document().orElseThrow().session().undo());
        assertTrue(OnEventThread.get(() -> harness().readings().isEmpty()));

        Files.writeString(file, "Wire;Measured mΩ\nW8;zwei\n");
        OnEventThread.run(() -> stage.view.book().get("take-in-values").run());
        OnEventThread.await("problem", () -> stage.prompts.asked.stream().anyMatch(each -> each.contains("line 2")));
        assertFalse(OnEventThread.get(
                () -> stage.desk().document().orElseThrow().session().isChanged()));
    }
}
