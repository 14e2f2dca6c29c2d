package org.ohmloom.pack;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;
import java.awt.print.PrinterAbortException;
import java.awt.print.PrinterException;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Paper;
import org.ohmloom.words.Text;

/**
 * Sheets of a document as a printer takes them: each on paper of its own size, or shrunk onto another paper where it is
 * larger. A sheet keeps borders of 10 mm itself, so the whole paper counts as printable.
 */
public final class PrintedSheets implements Pageable, Printable {

    private static final double POINTS_PER_MM = 72 / 25.4;

    /** Kept free on paper a sheet is shrunk onto, mm: office printers leave up to 5 mm white. */
    private static final double MARGIN_MM = 5;

    /** Sizes that differ by less are one, mm. */
    private static final double SAME_MM = 1;

    private final PrintedDocument document;
    private final List<Integer> chosen;
    private final Optional<Paper> onto;
    private final Progress progress;

    /**
     * Sheets to print.
     *
     * @param chosen   the sheets in order, counted from 0
     * @param onto     paper to shrink larger sheets onto; empty prints each true to size
     * @param progress told before each sheet; may stop it
     */
    public PrintedSheets(PrintedDocument document, List<Integer> chosen, Optional<Paper> onto, Progress progress) {
        this.document = document;
        this.chosen = List.copyOf(chosen);
        this.onto = onto;
        this.progress = progress;
    }

    /** How much a sheet is shrunk, 1 for true to size. */
    public double scale(int sheet) {
        return onto.filter(paper -> !fits(sheet, paper))
                .map(paper -> Math.min(
                        (longer(paper) - 2 * MARGIN_MM) / longer(sheet),
                        (shorter(paper) - 2 * MARGIN_MM) / shorter(sheet)))
                .orElse(1.0);
    }

    private boolean fits(int sheet, Paper paper) {
        return longer(sheet) < longer(paper) + SAME_MM && shorter(sheet) < shorter(paper) + SAME_MM;
    }

    private double longer(int sheet) {
        return Math.max(document.widthMm(sheet), document.heightMm(sheet));
    }

    private double shorter(int sheet) {
        return Math.min(document.widthMm(sheet), document.heightMm(sheet));
    }

    private static double longer(Paper paper) {
        return Math.max(paper.widthMm(), paper.heightMm());
    }

    private static double shorter(Paper paper) {
        return Math.min(paper.widthMm(), paper.heightMm());
    }

    @Override
    public int getNumberOfPages() {
        return chosen.size();
    }

    @Override
    public PageFormat getPageFormat(int page) {
        int sheet = chosen.get(page);
        boolean lying = document.widthMm(sheet) > document.heightMm(sheet);
        boolean shrunk = scale(sheet) < 1;
        double shorter = shrunk ? shorter(onto.orElseThrow()) : shorter(sheet);
        double longer = shrunk ? longer(onto.orElseThrow()) : longer(sheet);
        java.awt.print.Paper paper = new java.awt.print.Paper();
        paper.setSize(shorter * POINTS_PER_MM, longer * POINTS_PER_MM);
        paper.setImageableArea(0, 0, paper.getWidth(), paper.getHeight());
        PageFormat format = new PageFormat();
        format.setPaper(paper);
        format.setOrientation(lying ? PageFormat.LANDSCAPE : PageFormat.PORTRAIT);
        return format;
    }

    @Override
    public Printable getPrintable(int page) {
        return this;
    }

    @Override
    public int print(Graphics graphics, PageFormat format, int page) throws PrinterException {
        if (page >= chosen.size()) {
            return NO_SUCH_PAGE;
        }
        if (progress.isCancelled()) {
            throw new PrinterAbortException("printing was stopped");
        }
        int sheet = chosen.get(page);
        progress.step(page, chosen.size(), Text.of(document.title()));
        double scale = scale(sheet);
        Graphics2D own = (Graphics2D) graphics.create();
        try {
            own.translate(
                    (format.getWidth() - document.widthMm(sheet) * scale * POINTS_PER_MM) / 2,
                    (format.getHeight() - document.heightMm(sheet) * scale * POINTS_PER_MM) / 2);
            own.scale(scale * POINTS_PER_MM, scale * POINTS_PER_MM);
            document.paint(own, sheet);
        } finally {
            own.dispose();
        }
        return PAGE_EXISTS;
    }
}
