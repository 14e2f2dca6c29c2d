package org.ohmloom.pack;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.IntStream;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.DrawStyle;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.ReportPages;
import org.ohmloom.pack.page.Row;
import org.ohmloom.pack.page.TitleFields;

/**
 * A document set in sheets for a printer: the very scenes of the PDF of the build pack, painted by the painter that writes
 * it. Safe to paint from one thread at a time.
 */
public final class PrintedDocument {

    private final String title;
    private final List<Scene> sheets;
    private final ScenePainter painter;
    private final DrawStyle style;

    private PrintedDocument(String title, List<Scene> sheets, SceneFonts fonts, DrawStyle style) {
        this.title = title;
        this.sheets = List.copyOf(sheets);
        this.painter = new ScenePainter(fonts);
        this.style = style;
    }

    /**
     * Sets a document of the build pack; slow for a large harness.
     *
     * @param paper      paper of drawings; texts and tables go on the office paper that goes with it
     * @param monochrome whether all is in black and greys
     */
    public static PrintedDocument of(Analysis analysis, PackDocument document, Paper paper, boolean monochrome) {
        PackOptions options = new PackOptions(
                EnumSet.allOf(PackDocument.class),
                paper,
                monochrome,
                false,
                false,
                BoardOptions.USUAL,
                PictureOptions.USUAL);
        List<Scene> sheets = BuildPack.pages(analysis, options, document);
        return new PrintedDocument(document.title(), sheets, SceneFonts.load(), style(monochrome));
    }

    /**
     * Sets a table as it stands in a window.
     *
     * @param titleBlock of the harness it is about
     * @param title      what the table holds
     * @param heads      of its columns
     * @param numeric    whether each column holds numbers
     * @param rows       its cells as texts, row by row
     */
    public static PrintedDocument ofTable(
            TitleBlock titleBlock,
            String title,
            List<String> heads,
            List<Boolean> numeric,
            List<List<String>> rows,
            Paper paper,
            boolean monochrome) {
        List<Column> columns = new ArrayList<>();
        for (int k = 0; k < heads.size(); k++) {
            columns.add(numeric.get(k) ? Column.count(heads.get(k), 0) : Column.words(heads.get(k)));
        }
        List<Row> cells = rows.stream()
                .map(row -> Row.of(IntStream.range(0, row.size())
                        .mapToObj(k -> cell(row.get(k), numeric.get(k)))
                        .toArray(Cell[]::new)))
                .toList();
        SceneFonts fonts = SceneFonts.load();
        Report report = new Report(
                List.of(new Block.Table("list", columns, cells, "The list is empty.")),
                "A list as it stood in the window; the build pack has the documents to build by.");
        ReportPages.Pages pages = new ReportPages(fonts, paper).set(report, TitleFields.of(titleBlock, title));
        return new PrintedDocument(title, pages.scenes(), fonts, style(monochrome));
    }

    private static Cell cell(String text, boolean numeric) {
        try {
            return numeric && !text.isBlank() ? Cell.number(Double.parseDouble(text), text) : Cell.text(text);
        } catch (NumberFormatException words) {
            return Cell.text(text);
        }
    }

    private static DrawStyle style(boolean monochrome) {
        return monochrome ? DrawStyle.PRINT_MONO : DrawStyle.PRINT;
    }

    /** What it is called. */
    public String title() {
        return title;
    }

    /** Count of its sheets, 1 or more. */
    public int sheetCount() {
        return sheets.size();
    }

    /** Width of a sheet, mm; sheets count from 0. */
    public double widthMm(int sheet) {
        return sheets.get(sheet).widthMm();
    }

    /** Height of a sheet, mm; sheets count from 0. */
    public double heightMm(int sheet) {
        return sheets.get(sheet).heightMm();
    }

    /** Paints a sheet in millimetres; leaves the graphics as they were. */
    public void paint(Graphics2D graphics, int sheet) {
        painter.paint(graphics, sheets.get(sheet), style);
    }
}
