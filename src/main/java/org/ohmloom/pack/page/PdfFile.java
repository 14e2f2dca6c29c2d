package org.ohmloom.pack.page;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.zip.CRC32;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;
import org.ohmloom.draw.DrawStyle;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.draw.Weight;

/**
 * Writes scenes as the pages of a PDF: vectors, text as text in the embedded drawing font (only the letters used).
 * Reads no clock: the date is that of the title block and the file id follows from the content, so the same scenes give
 * the same bytes.
 */
public final class PdfFile {
    static final double POINTS_PER_MM = 72 / 25.4;

    /** A page is no longer than this, in its own units (ISO 32000-1, annex C); a longer one has a larger unit. */
    private static final double MOST_UNITS = 14_400;

    private final SceneFonts fonts;
    private final DrawStyle style;

    /** PDF files in a style for paper. */
    public PdfFile(SceneFonts fonts, DrawStyle style) {
        this.fonts = fonts;
        this.style = style;
    }

    /**
     * The bytes of the file.
     *
     * @param content pages, outline and links
     * @param fields  title, author and date
     * @throws IOException when the font cannot be read
     */
    public byte[] bytes(PdfContent content, TitleFields fields) throws IOException {
        try (PDDocument document = new PDDocument();
                PdfBoxGraphics2DFontTextDrawer letters = new PdfBoxGraphics2DFontTextDrawer()) {
            for (Weight weight : Weight.values()) {
                letters.registerFont(fonts.font("A", weight, 1).getFontName(Locale.ROOT), embedded(document, weight));
            }
            CRC32 sum = new CRC32();
            for (Scene scene : content.pages()) {
                sum.update(scene.dump().getBytes(StandardCharsets.UTF_8));
                page(document, letters, scene);
            }
            describe(document, fields);
            new PdfNavigation(document).put(content);
            document.setDocumentId(sum.getValue());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    /**
     * The drawing font in a document, letter by letter as the screen shows it. The substitutions of the font's GSUB table
     * (ligatures) stay off: they would set texts unlike the screen, and looking for them took most of the time of a pack.
     */
    private static PDFont embedded(PDDocument document, Weight weight) throws IOException {
        TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(SceneFonts.open(weight)));
        font.setEnableGsub(false);
        document.registerTrueTypeFontForClosing(font);
        return PDType0Font.load(document, font, true);
    }

    private void page(PDDocument document, PdfBoxGraphics2DFontTextDrawer letters, Scene scene) throws IOException {
        int unit = (int) Math.ceil(Math.max(scene.widthMm(), scene.heightMm()) * POINTS_PER_MM / MOST_UNITS);
        float width = (float) (scene.widthMm() * POINTS_PER_MM / unit);
        float height = (float) (scene.heightMm() * POINTS_PER_MM / unit);
        PDPage page = new PDPage(new PDRectangle(width, height));
        if (unit > 1) {
            page.setUserUnit(unit);
        }
        document.addPage(page);
        PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, width, height);
        graphics.setFontTextDrawer(letters);
        graphics.scale(POINTS_PER_MM / unit, POINTS_PER_MM / unit);
        new ScenePainter(fonts).paint(graphics, scene, style);
        graphics.dispose();
        try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
            stream.transform(new Matrix());
            stream.drawForm(graphics.getXFormObject());
        }
    }

    private static void describe(PDDocument document, TitleFields fields) {
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle(fields.documentType() + ": " + fields.title() + ", " + fields.number() + " revision "
                + fields.revision());
        about.setSubject(fields.documentType());
        about.setCreator("Ohmloom");
        about.setProducer("Ohmloom");
        fields.creator().ifPresent(about::setAuthor);
        fields.date().flatMap(PdfFile::date).ifPresent(about::setCreationDate);
        document.setDocumentInformation(about);
        document.getDocumentCatalog().setLanguage(fields.language().orElse("en"));
        PDViewerPreferences preferences =
                new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
        preferences.setDisplayDocTitle(true);
    }

    private static Optional<Calendar> date(String text) {
        if (!text.matches("\\d{4}-\\d{2}-\\d{2}")) {
            return Optional.empty();
        }
        Calendar date = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        date.clear();
        date.set(
                Integer.parseInt(text.substring(0, 4)),
                Integer.parseInt(text.substring(5, 7)) - 1,
                Integer.parseInt(text.substring(8)));
        return Optional.of(date);
    }
}
