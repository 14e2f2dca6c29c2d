package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;

/** A form board printed at actual size measures true: the bars of its tiles, and the centre lines of its segments. */
@BesideOthers
class FormBoardPdfTest {

    /** What a print at 1:1 may be off. */
    private static final double TRUE_RATIO = 0.005;

    private static final double MM_PER_POINT = 25.4 / 72;
    private static final float DOTS_PER_INCH = 200;
    private static final double DOTS_PER_MM = DOTS_PER_INCH / 25.4;

    @TempDir
    private Path folder;

    private File written(String example, PackOptions options) throws PackException {
        BuildPack.write(Packs.analysis(example), folder, options, Progress.NONE);
        return Packs.find(folder, "form-board.pdf").toFile();
    }

    /** The level bar begins 15 mm from the left, the upright one is 8.6 to 11 mm from it, above the lower side of the picture, 30 mm from below. */
    @Test
    void bothBarsOfATileMeasureAHundredMillimetresInItsPixels() throws IOException, PackException {
        PackOptions options = PackOptions.ALL.withDocuments("form-board").withPaper("A4");
        try (PDDocument document = Loader.loadPDF(written("teaching", options))) {
            BufferedImage tile =
                    new PDFRenderer(document).renderImageWithDPI(document.getNumberOfPages() - 1, DOTS_PER_INCH);
            double highMm = tile.getHeight() / DOTS_PER_MM;
            int y = (int) Math.round((highMm - 30 + 6 + 0.12) * DOTS_PER_MM);
            int x = (int) Math.round((15 - 4 - 2.4 + 0.12) * DOTS_PER_MM);
            double level = longestDark(tile, true, y) / DOTS_PER_MM;
            double upright = longestDark(tile, false, x) / DOTS_PER_MM;
            assertEquals(100, level, 100 * TRUE_RATIO, "level bar");
            assertEquals(100, upright, 100 * TRUE_RATIO, "upright bar");
        }
    }

    /** Length of the longest dark run near a row or a column, pixels; its ends are where grey passes one half. */
    private static int longestDark(BufferedImage image, boolean row, int at) {
        int longest = 0;
        for (int near = at - 2; near <= at + 2; near++) {
            int run = 0;
            for (int k = 0; k < (row ? image.getWidth() : image.getHeight()); k++) {
                int grey = (row ? image.getRGB(k, near) : image.getRGB(near, k)) & 0xFF;
                run = grey < 170 ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
        }
        return longest;
    }

    @Test
    void theCentreLineOfEverySegmentMeasuresItsLengthOnOneSheet() throws IOException, PackException {
        Harness harness = Packs.analysis("star-ground").harness();
        PackOptions options = PackOptions.ALL.withDocuments("form-board").withWholeBoards(true);
        assertMeasures(harness, written("star-ground", options));
    }

    /** A page of more than 14,400 of its own units, 5.08 m, has a larger unit. */
    @Test
    void aBoardLongerThanAPageMayBeInPointsStillMeasuresTrue() throws IOException, PackException {
        Harness harness = Packs.analysis("star-ground").harness();
        PackOptions options = PackOptions.ALL
                .withDocuments("form-board")
                .withBoard("9000 x 700")
                .withWholeBoards(true);
        assertMeasures(harness, written("star-ground", options));
    }

    private static void assertMeasures(Harness harness, File file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            PDPage page = document.getPage(document.getNumberOfPages() - 1);
            Strokes strokes = new Strokes(page);
            strokes.processPage(page);
            for (BundleSegment segment : harness.segments().all()) {
                double lengthMm = 1000 * segment.lengthMetres();
                assertTrue(
                        strokes.lengthsMm.stream().anyMatch(each -> Math.abs(each - lengthMm) <= TRUE_RATIO * lengthMm),
                        segment.id() + ", " + lengthMm + " mm, among " + strokes.lengthsMm);
            }
        }
    }

    /** Lengths of the open lines that a page strokes. */
    private static final class Strokes extends PDFGraphicsStreamEngine {
        private final List<Double> lengthsMm = new ArrayList<>();
        private final double mmPerUnit;
        private Point2D at = new Point2D.Double();
        private double length;

        Strokes(PDPage page) {
            super(page);
            mmPerUnit = MM_PER_POINT * page.getUserUnit();
        }

        @Override
        public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {}

        @Override
        public void drawImage(PDImage image) {}

        @Override
        public void clip(int windingRule) {}

        @Override
        public void moveTo(float x, float y) {
            at = new Point2D.Double(x, y);
            length = 0;
        }

        @Override
        public void lineTo(float x, float y) {
            Point2D to = new Point2D.Double(x, y);
            length += at.distance(to);
            at = to;
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            lineTo(x3, y3);
        }

        @Override
        public Point2D getCurrentPoint() {
            return at;
        }

        @Override
        public void closePath() {}

        @Override
        public void endPath() {}

        @Override
        public void strokePath() {
            lengthsMm.add(length * mmPerUnit);
        }

        @Override
        public void fillPath(int windingRule) {}

        @Override
        public void fillAndStrokePath(int windingRule) {}

        @Override
        public void shadingFill(COSName shadingName) {}
    }
}
