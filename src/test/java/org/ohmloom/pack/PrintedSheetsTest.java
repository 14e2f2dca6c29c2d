package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.awt.print.PrinterAbortException;
import java.awt.print.PrinterException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Paper;
import org.ohmloom.words.Text;

/** Sheets as a printer takes them. */
@BesideOthers
class PrintedSheetsTest {

    private static final double POINTS = 0.01;
    private static final double SHARE = 1e-9;
    private static final Analysis TEACHING = AnalysedExamples.of("teaching");

    private static PrintedDocument drawing(Paper paper) {
        return PrintedDocument.of(TEACHING, PackDocument.DRAWING, paper, false);
    }

    private static PrintedSheets all(PrintedDocument document, Optional<Paper> onto, Progress progress) {
        return new PrintedSheets(
                document, IntStream.range(0, document.sheetCount()).boxed().toList(), onto, progress);
    }

    /** What comes out of a printer of 72 dots for an inch. */
    private static BufferedImage printed(PrintedSheets sheets, int page) throws PrinterException {
        PageFormat format = sheets.getPageFormat(page);
        BufferedImage paper = new BufferedImage(
                (int) Math.ceil(format.getWidth()), (int) Math.ceil(format.getHeight()), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = paper.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, paper.getWidth(), paper.getHeight());
        assertEquals(Printable.PAGE_EXISTS, sheets.getPrintable(page).print(graphics, format, page));
        graphics.dispose();
        return paper;
    }

    private static long inked(BufferedImage paper, int fromX, int toX) {
        return IntStream.range(fromX, toX)
                .mapToLong(x -> IntStream.range(0, paper.getHeight())
                        .filter(y -> paper.getRGB(x, y) != Color.WHITE.getRGB())
                        .count())
                .sum();
    }

    @Test
    void theDrawingOnA3LiesOnPaperOfItsOwnSize() throws PrinterException {
        PrintedSheets sheets = all(drawing(Paper.A3), Optional.empty(), Progress.NONE);
        PageFormat format = sheets.getPageFormat(0);
        assertEquals(PageFormat.LANDSCAPE, format.getOrientation());
        // 420 mm x 297 mm at 72 points for 25.4 mm.
        assertEquals(420 / 25.4 * 72, format.getWidth(), POINTS);
        assertEquals(297 / 25.4 * 72, format.getHeight(), POINTS);
        BufferedImage paper = printed(sheets, 0);
        assertTrue(inked(paper, 0, paper.getWidth()) > 5000, "the sheet is drawn on");
        // ISO 5457: 20 mm on the filing side, 10 mm beside: 28 points are left free there.
        assertEquals(0, inked(paper, paper.getWidth() - 10, paper.getWidth()), "the edge stays white");
    }

    @Test
    void aSheetOfA3IsShrunkOntoA4AndOneOfA4StaysTrueToSize() throws PrinterException {
        PrintedSheets shrunk = all(drawing(Paper.A3), Optional.of(Paper.A4), Progress.NONE);
        // 5 mm stay free around: (297 - 10) / 420 against (210 - 10) / 297; the smaller serves.
        assertEquals(Math.min(287 / 420.0, 200 / 297.0), shrunk.scale(0), SHARE);
        assertEquals(297 / 25.4 * 72, shrunk.getPageFormat(0).getWidth(), POINTS);
        assertTrue(inked(printed(shrunk, 0), 0, 842) > 2000);
        PrintedDocument list = PrintedDocument.of(TEACHING, PackDocument.WIRE_LIST, Paper.A3, false);
        assertEquals(1, all(list, Optional.of(Paper.A4), Progress.NONE).scale(0), SHARE);
    }

    @Test
    void everyDocumentHasSheetsAndTheSameAsItsPdf() {
        PackOptions options = PackOptions.ALL;
        for (PackDocument document : List.of(
                PackDocument.COVER, PackDocument.PIN_TABLES, PackDocument.TEST_SHEET, PackDocument.FORM_BOARD)) {
            PrintedDocument printed = PrintedDocument.of(TEACHING, document, Paper.A3, false);
            assertEquals(
                    BuildPack.pages(TEACHING, options).get(document).size(), printed.sheetCount(), document.title());
        }
    }

    @Test
    void aLongListGoesOnOverSheetsAndKeepsEveryRow() {
        List<List<String>> rows = IntStream.rangeClosed(1, 120)
                .mapToObj(k -> List.of("W" + k, String.valueOf(k / 10.0)))
                .toList();
        PrintedDocument list = PrintedDocument.ofTable(
                TEACHING.harness().titleBlock(),
                "Wires",
                List.of("Wire", "Length (m)"),
                List.of(false, true),
                rows,
                Paper.A4,
                true);
        assertTrue(list.sheetCount() > 1, "120 rows do not go on one sheet of A4");
        assertEquals(297, list.widthMm(0), SHARE);
    }

    @Test
    void onlyTheChosenSheetsComeOutAndStoppingEndsIt() throws PrinterException {
        PrintedDocument calculation = PrintedDocument.of(TEACHING, PackDocument.CALCULATION, Paper.A3, false);
        assertTrue(calculation.sheetCount() > 2);
        List<Integer> told = new ArrayList<>();
        boolean[] stop = new boolean[1];
        PrintedSheets two = new PrintedSheets(calculation, List.of(2, 0), Optional.empty(), new Progress() {
            @Override
            public boolean isCancelled() {
                return stop[0];
            }

            @Override
            public void step(int done, int total, Text what) {
                told.add(done);
                assertEquals(2, total);
            }
        });
        assertEquals(2, two.getNumberOfPages());
        printed(two, 0);
        printed(two, 1);
        assertEquals(List.of(0, 1), told);
        stop[0] = true;
        assertThrows(PrinterAbortException.class, () -> printed(two, 0));
    }
}
