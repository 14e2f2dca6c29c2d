package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.BesideOthers;

/** The PDF pages of every example: fonts, frames, paper, colours. */
@BesideOthers
class PackPagesTest {
    private static final double POINTS_PER_MM = 72 / 25.4;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @MethodSource("org.ohmloom.pack.Packs#examples")
    void everyLetterIsInAnEmbeddedFontAndInsideTheFrame(String example) throws IOException {
        Path written = Packs.written(example);
        for (PackDocument kind : PackDocument.values()) {
            try (PDDocument document =
                    Loader.loadPDF(Packs.find(written, kind.id() + ".pdf").toFile())) {
                assertTrue(document.getDocumentInformation().getTitle().startsWith(kind.title()));
                assertEquals("Ohmloom", document.getDocumentInformation().getProducer());
                for (int page = 1; page <= document.getNumberOfPages(); page++) {
                    String place = kind.id() + " page " + page;
                    assertEmbedded(document.getPage(page - 1).getResources(), place);
                    assertInside(document, page, place, kind == PackDocument.FORM_BOARD ? 5 : 15);
                }
            }
        }
    }

    private static void assertEmbedded(PDResources resources, String place) throws IOException {
        TreeSet<String> fonts = new TreeSet<>();
        for (COSName name : resources.getXObjectNames()) {
            if (resources.getXObject(name) instanceof PDFormXObject form) {
                for (COSName font : form.getResources().getFontNames()) {
                    PDFont found = form.getResources().getFont(font);
                    assertTrue(found.isEmbedded(), place + ": " + found.getName());
                    assertTrue(found.getName().matches("[A-Z]{6}\\+Roboto.*"), place + ": " + found.getName());
                    fonts.add(found.getName());
                }
            }
        }
        assertTrue(!fonts.isEmpty(), place + " has no text");
    }

    /** The frame lies 20 mm from the left and 10 mm from the other sides; a sheet may letter its grid 5 mm outside it. Tiles use the paper up to 5 mm from its edges. */
    private static void assertInside(PDDocument document, int page, String place, double leftMm) throws IOException {
        PDPage sheet = document.getPage(page - 1);
        double width = sheet.getMediaBox().getWidth();
        double height = sheet.getMediaBox().getHeight();
        double most = 5 * POINTS_PER_MM;
        for (TextPosition letter : Packs.letters(document, page)) {
            String what = place + ": '" + letter.getUnicode() + "' at " + letter.getX() + ", " + letter.getY();
            double top = letter.getDir() == 0 ? letter.getY() - letter.getHeightDir() : letter.getY();
            assertTrue(letter.getX() >= leftMm * POINTS_PER_MM, what);
            assertTrue(letter.getX() + letter.getWidth() <= width - most, what);
            assertTrue(top >= most, what);
            assertTrue(letter.getY() <= height - most, what);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground"})
    void aMonochromePackHasNoColour(String example) throws IOException, PackException {
        PackOptions options = PackOptions.ALL.withMonochrome(true);
        BuildPack.write(Packs.analysis(example), folder, options, Progress.NONE);
        for (PackDocument kind : PackDocument.values()) {
            try (PDDocument document =
                    Loader.loadPDF(Packs.find(folder, kind.id() + ".pdf").toFile())) {
                BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 40);
                for (int y = 0; y < image.getHeight(); y++) {
                    for (int x = 0; x < image.getWidth(); x++) {
                        int rgb = image.getRGB(x, y);
                        int red = rgb >> 16 & 0xFF;
                        assertEquals(red, rgb >> 8 & 0xFF, 2, kind.id() + " at " + x + ", " + y);
                        assertEquals(red, rgb & 0xFF, 2, kind.id() + " at " + x + ", " + y);
                    }
                }
            }
        }
    }

    @Test
    void theDrawingIsOnThePaperAskedForAndTablesOnA4() throws IOException, PackException {
        PackOptions options = PackOptions.ALL.withDocuments("drawing,wire-list").withPaper("a1");
        BuildPack.write(Packs.analysis("teaching"), folder, options, Progress.NONE);
        assertWidth("drawing.pdf", 841);
        assertWidth("wire-list.pdf", 297);
    }

    @Test
    void tablesBesideADrawingOfAsmeY141AreOnItsSizeA() throws IOException, PackException {
        PackOptions options = PackOptions.ALL.withDocuments("drawing,wire-list").withPaper("ansi c");
        BuildPack.write(Packs.analysis("teaching"), folder, options, Progress.NONE);
        assertWidth("drawing.pdf", 22 * 25.4);
        assertWidth("wire-list.pdf", 11 * 25.4);
    }

    private void assertWidth(String ending, double widthMm) throws IOException {
        try (PDDocument document = Loader.loadPDF(Packs.find(folder, ending).toFile())) {
            assertNotNull(document.getPage(0));
            assertEquals(
                    widthMm * POINTS_PER_MM, document.getPage(0).getMediaBox().getWidth(), 0.1);
        }
    }
}
