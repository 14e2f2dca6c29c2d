package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.DrawStyle;
import org.ohmloom.draw.DrawingSheet;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;
import org.ohmloom.pack.page.PngFile;
import org.ohmloom.pack.page.SvgFile;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** The drawing as pictures: whole, at true size, the same every time, and in the list of checksums. */
@BesideOthers
class DrawingPicturesTest {

    @TempDir
    private Path folder;

    private static Document parsed(String svg) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        } catch (SAXException | ParserConfigurationException broken) {
            throw new AssertionError(svg, broken);
        }
    }

    @Test
    void theSvgOfASheetIsWholeXmlAtTrueSizeWithEveryTextOfTheSheet() throws IOException {
        SceneFonts fonts = SceneFonts.load();
        for (Scene sheet : new DrawingSheet(fonts)
                .sheets(Packs.analysis("star-ground").harness(), Packs.analysis("star-ground"), Paper.ANSI_B)) {
            Document svg = parsed(SvgFile.text(sheet, "Drawing", DrawStyle.PRINT));
            assertEquals("431.8mm", svg.getDocumentElement().getAttribute("width"));
            assertEquals("0 0 431.8 279.4", svg.getDocumentElement().getAttribute("viewBox"));
            List<String> drawn = new ArrayList<>();
            NodeList texts = svg.getElementsByTagName("text");
            for (int k = 0; k < texts.getLength(); k++) {
                drawn.add(texts.item(k).getTextContent());
            }
            List<String> expected = sheet.items().stream()
                    .filter(item -> item.mark() instanceof Text)
                    .map(item -> ((Text) item.mark()).text())
                    .filter(text -> !text.isBlank())
                    .toList();
            assertEquals(expected, drawn);
        }
    }

    @Test
    void lettersThatMeanSomethingToXmlAndHalvesOfLettersDoNotBreakIt() throws IOException {
        String words = "a<b>&\"c\" \u0001 \ud800";
        Text text = new Text(words, new Point(5, 5), 2.5, 20, Anchor.START, 0, Weight.BOLD, Ink.TEXT);
        Item item = new Item(Layer.SHEET, text, Optional.of("<&>"), Optional.of(words));
        Document svg = parsed(SvgFile.text(new Scene(50, 10, List.of(item)), words, DrawStyle.PRINT));
        assertTrue(svg.getDocumentElement().getTextContent().contains("a<b>&\"c\""));
    }

    /** A3 is 420 by 297 mm: at 200 dots to the inch floor(420 x 200 / 25.4) = 3307 by floor(297 x 200 / 25.4) = 2338. */
    @Test
    void eachSheetIsAPictureOfTheResolutionAskedForAndListedWithItsChecksum() throws IOException, PackException {
        PackOptions options = PackOptions.ALL.withDocuments("drawing").withPictures("svg,png");
        List<Path> files = BuildPack.write(Packs.analysis("teaching"), folder, options, Progress.NONE);
        BufferedImage first = ImageIO.read(Packs.find(folder, "drawing-1.png").toFile());
        assertEquals(3307, first.getWidth());
        assertEquals(2338, first.getHeight());
        String manifest = Files.readString(Packs.find(folder, "manifest.csv"));
        long pictures = files.stream()
                .map(file -> file.getFileName().toString())
                .filter(name -> name.endsWith(".svg") || name.endsWith(".png"))
                .peek(name -> assertTrue(manifest.contains(name), name))
                .count();
        assertTrue(pictures >= 2 && pictures % 2 == 0, pictures + " pictures");
        Map<String, byte[]> once = Packs.contents(folder);
        BuildPack.write(Packs.analysis("teaching"), folder, options, Progress.NONE);
        Packs.contents(folder).forEach((name, bytes) -> assertArrayEquals(once.get(name), bytes, name));
    }

    /** A0 at 1200 dots to the inch would be 56,173 by 39,732 pixels; 64 million are the most: about 9,512 by 6,728. */
    @Test
    void aPictureThatWouldBeTooLargeGetsFewerDots() throws IOException {
        byte[] png = PngFile.bytes(new Scene(1189, 841, List.of()), SceneFonts.load(), DrawStyle.PRINT, 1200);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        assertEquals(9512, image.getWidth(), 1);
        assertEquals(6728, image.getHeight(), 1);
    }

    @Test
    void onlyPicturesThereAreCanBeAskedFor() throws PackException {
        assertEquals(
                new PictureOptions(false, true, 200),
                PackOptions.ALL.withPictures("png").pictures());
        assertEquals(
                new PictureOptions(false, false, 200),
                PackOptions.ALL.withPictures("none").pictures());
        assertEquals(300, PackOptions.ALL.withDots(300).pictures().dotsPerInch());
        PackException refused = assertThrows(PackException.class, () -> PackOptions.ALL.withPictures("svg,bmp"));
        assertEquals("'bmp' is no kind of picture; choose from svg, png, none", refused.getMessage());
        assertThrows(PackException.class, () -> PackOptions.ALL.withDots(5));
    }
}
