package org.ohmloom.workbench.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.print.DocFlavor;
import javax.print.PrintService;
import javax.print.StreamPrintServiceFactory;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.table.DefaultTableModel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Paper;
import org.ohmloom.pack.PackDocument;
import org.ohmloom.pack.PrintedDocument;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;

/** Printing from the window, to a printer that writes PostScript into memory. */
class PrintPaneTest {

    private static final Analysis TEACHING = AnalysedExamples.of("teaching");

    private final Stage stage = new Stage();
    private final List<String> told = new ArrayList<>();
    private final List<String> closed = new ArrayList<>();
    private final ByteArrayOutputStream paper = new ByteArrayOutputStream();
    private PrintPane pane;

    @BeforeEach
    void openThePane() {
        pane = OnEventThread.get(() -> new PrintPane(
                Printables.of(TEACHING, stage.view), stage.services(), told::add, () -> closed.add("closed")));
        awaitSheets();
    }

    private void awaitSheets() {
        OnEventThread.await("the sheets", () -> !pane.isBusy() && place().startsWith("Sheet"));
    }

    private String place() {
        return ((JLabel) named(pane, "print-place")).getText();
    }

    private static Component named(Container within, String name) {
        for (Component each : within.getComponents()) {
            if (name.equals(each.getName())) {
                return each;
            }
            Component found = each instanceof Container container ? named(container, name) : null;
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private void press(String name) {
        OnEventThread.run(() -> ((AbstractButton) named(pane, name)).doClick());
    }

    private void choose(PackDocument document) {
        OnEventThread.run(() -> {
            JComboBox<?> box = (JComboBox<?>) named(pane, "print-document");
            IntStream.range(0, box.getItemCount())
                    .filter(k -> ((Printed) box.getItemAt(k)).name().equals(document.title()))
                    .forEach(box::setSelectedIndex);
        });
        awaitSheets();
    }

    private void offerAPrinter() {
        StreamPrintServiceFactory[] found = StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
                DocFlavor.SERVICE_FORMATTED.PAGEABLE, "application/postscript");
        PrintService printer = found[0].getPrintService(paper);
        OnEventThread.run(() -> pane.offer(List.of(printer), Optional.of(printer)));
    }

    private long sheetsOnPaper() {
        return paper.toString(StandardCharsets.ISO_8859_1)
                .lines()
                .filter(line -> line.matches("%%Page: \\d+ \\d+"))
                .count();
    }

    @Test
    void theChosenSheetsOfADocumentArePrintedAndNothingIsAsked() {
        choose(PackDocument.CALCULATION);
        offerAPrinter();
        OnEventThread.run(() -> ((JTextField) named(pane, "print-ranges")).setText("1, 3"));
        press("print-start");
        OnEventThread.await("the end", () -> !closed.isEmpty());
        assertEquals(List.of("Findings and calculation printed, sheets: 2"), told);
        assertEquals(2, sheetsOnPaper());
    }

    @Test
    void sheetsAreTurnedAndAWrongRangeSaysWhatWouldBeRight() {
        choose(PackDocument.CALCULATION);
        press("print-next");
        assertTrue(place().startsWith("Sheet 2 of "), place());
        press("print-previous");
        press("print-previous");
        assertTrue(place().startsWith("Sheet 1 of "), "before the first there is none");
        assertFalse(named(pane, "print-start").isEnabled());
        assertTrue(pane.saysText().startsWith("No printer is set up"), pane.saysText());
        offerAPrinter();
        assertTrue(named(pane, "print-start").isEnabled());
        OnEventThread.run(() -> ((JTextField) named(pane, "print-ranges")).setText("all of it"));
        assertFalse(named(pane, "print-start").isEnabled());
        assertTrue(pane.saysText().contains("1-3, 5"), pane.saysText());
    }

    @Test
    void aDocumentThatCannotBeSetSaysWhyAndTheNextOneIsSet() {
        Printed broken = new Printed() {
            @Override
            public String name() {
                return "broken";
            }

            @Override
            public PrintedDocument set(Paper paper, boolean monochrome) {
                throw new IllegalStateException("the sheet is too small");
            }
        };
        Printed sound = Printables.of(TEACHING, stage.view).get(0);
        pane = OnEventThread.get(
                () -> new PrintPane(List.of(broken, sound), stage.services(), told::add, () -> closed.add("closed")));
        OnEventThread.await("the refusal", () -> !pane.isBusy());
        offerAPrinter();
        assertEquals("the sheet is too small", pane.saysText());
        assertFalse(named(pane, "print-start").isEnabled());
        OnEventThread.run(() -> ((JComboBox<?>) named(pane, "print-document")).setSelectedIndex(1));
        awaitSheets();
        assertEquals(" ", pane.saysText());
        assertTrue(named(pane, "print-start").isEnabled());
    }

    @Test
    void printingThatIsStoppedSaysSoAndStaysOpen() {
        List<Printing.Result> results = new ArrayList<>();
        StreamPrintServiceFactory[] found = StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
                DocFlavor.SERVICE_FORMATTED.PAGEABLE, "application/postscript");
        PrintedDocument calculation = PrintedDocument.of(TEACHING, PackDocument.CALCULATION, Paper.A3, false);
        Printing[] printing = new Printing[1];
        printing[0] = new Printing(step -> printing[0].cancel(), results::add);
        OnEventThread.run(() -> {
            printing[0].start(new Printing.Job(
                    found[0].getPrintService(paper),
                    calculation,
                    IntStream.range(0, calculation.sheetCount()).boxed().toList(),
                    Optional.empty(),
                    1));
            printing[0].cancel();
        });
        OnEventThread.await("the end", () -> !results.isEmpty());
        assertTrue(results.get(0).cancelled(), results.toString());
        assertTrue(results.get(0).problem().isEmpty(), results.toString());
        assertTrue(sheetsOnPaper() < calculation.sheetCount());
    }

    @Test
    void aListIsPrintedAsItStandsInTheWindow() {
        JTable table = new JTable(new DefaultTableModel(
                new Object[][] {{"W1", "4 mm²", "0.15"}, {"W2", "2.5 mm²", "1"}},
                new Object[] {"Wire", "Conductor", "Length (m)"}));
        table.getAccessibleContext().setAccessibleName("Wires");
        table.moveColumn(2, 0);
        Printables.Listed list = Printables.Listed.of(TEACHING.harness().titleBlock(), table);
        assertEquals(List.of("Length (m)", "Wire", "Conductor"), list.heads());
        assertEquals(List.of(true, false, false), list.numeric());
        assertEquals(List.of("0.15", "W1", "4 mm²"), list.rows().get(0));
        assertEquals(1, list.set(Paper.A4, false).sheetCount());
    }

    @Test
    void rangesOfSheetsAreReadAsTheyAreWritten() {
        assertEquals(List.of(0, 1, 2), SheetRanges.of("", 3));
        assertEquals(List.of(0, 1, 2, 4), SheetRanges.of("1-3, 5", 6));
        assertEquals(List.of(4, 5, 0), SheetRanges.of("5-; 1", 6));
        assertEquals(List.of(0, 1), SheetRanges.of("-2", 6));
        assertEquals(List.of(1), SheetRanges.of("2,2", 6));
        for (String wrong : List.of("0", "7", "3-1", "x", "1,,2")) {
            IllegalArgumentException refused =
                    assertThrows(IllegalArgumentException.class, () -> SheetRanges.of(wrong, 6), wrong);
            assertEquals(1, refused.getMessage().lines().count());
        }
    }
}
