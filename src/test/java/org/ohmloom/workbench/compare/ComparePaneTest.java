package org.ohmloom.workbench.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.sheet.SheetTable;

/** What differs from another revision, in the window. */
class ComparePaneTest {
    private static final int ELEMENTS = 0;
    private static final int PARTS = 1;
    private static final int NUMBERS = 2;

    private final Stage stage = new Stage();

    @TempDir
    Path folder;

    @BeforeEach
    void open() {
        stage.openExample("teaching");
        OnEventThread.run(() -> stage.view.viewTabs().showStudy(ComparePane.KEY));
    }

    private ComparePane pane() {
        return (ComparePane) stage.view.viewTabs().study(ComparePane.KEY);
    }

    private void thicken() {
        OnEventThread.run(() ->
                stage.desk().apply(new SetWireGauge(List.of(new WireId("W6")), Optional.of(Gauge.parse("2.5 mm2")))));
        stage.awaitResults();
    }

    private List<String> lines(int list) {
        return OnEventThread.get(() -> {
            SheetTable table = pane().table(list);
            return IntStream.range(0, table.getRowCount())
                    .mapToObj(row -> IntStream.range(0, table.getColumnCount())
                            .mapToObj(column -> table.getValueAt(row, column).toString())
                            .reduce("", (one, other) -> one + "|" + other))
                    .toList();
        });
    }

    private void run(String command) {
        OnEventThread.run(() -> stage.view.book().get(command).run());
        OnEventThread.await("comparison", () -> !pane().isBusy());
    }

    @Test
    void whatWasChangedSinceSavedStandsFieldByFieldWithWhatItDoes() {
        thicken();
        run("compare-saved");

        assertEquals(
                "From what was saved: 0 added, 0 removed, 1 changed, 0 renumbered",
                OnEventThread.get(() -> pane().summaryText()));
        assertEquals(List.of("|wire|W6||changed|size|1.5 mm²|2.5 mm²"), lines(ELEMENTS));
        // 2.5 mm2 more of one wire, less of 1.5 mm2.
        for (String size : List.of("1.5 mm²", "2.5 mm²")) {
            assertTrue(lines(PARTS).stream().anyMatch(line -> line.contains(size)), () -> lines(PARTS)
                    .toString());
        }
        assertTrue(lines(NUMBERS).stream().anyMatch(line -> line.startsWith("|W6|")), () -> lines(NUMBERS)
                .toString());
        OnEventThread.run(() -> pane().table(ELEMENTS).setRowSelectionInterval(0, 0));
        assertEquals(
                Optional.of("W6"),
                OnEventThread.get(() -> stage.desk().selection().lead()));

        OnEventThread.run(() -> stage.desk().document().orElseThrow().session().undo());
        assertTrue(
                OnEventThread.get(() -> pane().summaryText()).startsWith("Outdated, the harness has changed since. "));
    }

    /** The pump and what goes with it: a line for each thing, however many fields it had. */
    @Test
    void whatIsGoneStandsInOneLineWithItsFieldsBehindIt() {
        OnEventThread.run(() -> stage.desk().apply(new TakeOut(List.of(new ComponentId("P1")))));
        stage.awaitResults();
        run("compare-saved");
        List<String> gone = lines(ELEMENTS).stream()
                .filter(line -> line.contains("|removed|"))
                .toList();
        assertEquals(1, gone.stream().filter(line -> line.contains("|P1|")).count(), gone::toString);
        String pump =
                gone.stream().filter(line -> line.contains("|P1|")).findFirst().orElseThrow();
        assertTrue(pump.matches(".*\\|all [0-9]+ entries\\|.*"), pump);
        int row = lines(ELEMENTS).indexOf(pump);
        String told = OnEventThread.get(() -> {
            SheetTable table = pane().table(ELEMENTS);
            int column = table.getColumnModel().getColumnIndex("Before");
            return ((JComponent) table.prepareRenderer(table.getCellRenderer(row, column), row, column))
                    .getToolTipText();
        });
        assertTrue(told.contains("<br>") && told.contains("name: "), told);
    }

    @Test
    void anOldRevisionInAFileIsReadOffTheEventThreadAndItsChangeSheetWritten() throws Exception {
        Path old = folder.resolve("old.harness.json");
        Harness now = OnEventThread.get(() -> stage.desk().harness().orElseThrow());
        HarnessFiles.write(old, now);
        stage.prompts.target = Optional.of(old);
        run("compare-file");
        assertEquals("The same as old.harness.json.", OnEventThread.get(() -> pane().summaryText()));

        thicken();
        run("compare-file");
        assertEquals(1, lines(ELEMENTS).size());
        stage.prompts.target = Optional.of(folder.resolve("sheet"));
        OnEventThread.run(() -> pane().write());
        OnEventThread.await("change sheet", () -> stage.desk().message().startsWith("Change sheet written"));
        try (var files = Files.list(folder.resolve("sheet"))) {
            assertTrue(files.anyMatch(file -> file.toString().endsWith(".pdf")));
        }
    }

    @Test
    void aFileThatIsNoHarnessIsToldAndAComparisonCanBeStopped() throws Exception {
        Path broken = folder.resolve("broken.harness.json");
        Files.writeString(broken, "{");
        stage.prompts.target = Optional.of(broken);
        run("compare-file");
        assertTrue(stage.prompts.asked.stream().anyMatch(each -> each.startsWith("The revisions were not compared")));

        thicken();
        OnEventThread.run(() -> {
            pane().compareWithSaved();
            pane().stop();
        });
        assertTrue(OnEventThread.get(() -> !pane().isBusy()));
        assertEquals(List.of(), lines(ELEMENTS));
    }

    @Test
    void whatWasComparedOfAnotherHarnessIsNotShownBesideThisOne() {
        thicken();
        run("compare-saved");
        run("begin-side-copy");
        assertEquals(1, lines(ELEMENTS).size(), "a side copy is still about its original");
        run("drop-side-copy");
        OnEventThread.run(() -> stage.desk().document().orElseThrow().session().goTo(0));
        stage.openExample("star-ground");
        assertEquals(List.of(), lines(ELEMENTS));
        assertEquals(List.of(), lines(NUMBERS));
    }
}
