package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionRemoteGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDNamedDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;

/** Links between the documents of a pack, followed as a reader of PDF would. */
@BesideOthers
class CrossLinksTest {

    /** A link as a reader finds it: where it stands and where it leads. */
    private record Found(int page, PDRectangle at, String file, String place) {}

    private static List<Found> links(Path pdf) throws IOException {
        List<Found> found = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                for (PDAnnotation each : document.getPage(page).getAnnotations()) {
                    found.add(found(
                            page, (PDAnnotationLink) each, pdf.getFileName().toString()));
                }
            }
        }
        return found;
    }

    private static Found found(int page, PDAnnotationLink link, String here) throws IOException {
        if (link.getAction() instanceof PDActionRemoteGoTo there) {
            return new Found(
                    page, link.getRectangle(), there.getFile().getFile(), ((COSString) there.getD()).getString());
        }
        PDNamedDestination place = (PDNamedDestination) link.getDestination();
        return new Found(page, link.getRectangle(), here, place.getNamedDestination());
    }

    private static Set<String> places(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            var names = document.getDocumentCatalog().getNames();
            return names == null || names.getDests() == null
                    ? Set.of()
                    : new TreeSet<>(names.getDests().getNames().keySet());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup"})
    void everyLinkLeadsToAPlaceThatIsThereInsideItsPage(String example) throws IOException {
        Path pack = Packs.written(example);
        Map<String, Set<String>> placesByFile = new HashMap<>();
        int count = 0;
        for (PackDocument document : PackDocument.values()) {
            Path pdf = Packs.find(pack, "-" + document.id() + ".pdf");
            for (Found link : links(pdf)) {
                count++;
                Path target = pack.resolve(link.file());
                if (!placesByFile.containsKey(link.file())) {
                    placesByFile.put(link.file(), places(target));
                }
                assertTrue(
                        placesByFile.get(link.file()).contains(link.place()), document + " leads to nothing: " + link);
                assertTrue(
                        link.at().getLowerLeftX() >= 0 && link.at().getLowerLeftY() >= 0, document + " off: " + link);
            }
        }
        Harness harness = Packs.analysis(example).harness();
        assertTrue(count > 2 * harness.wires().size(), count + " links");
    }

    @Test
    void theNameOfAWireInAPinTableLeadsToItsRowOfTheCutListAndThatToTheDrawing() throws IOException {
        Path pack = Packs.written("teaching");
        Harness harness = Packs.analysis("teaching").harness();
        List<Found> pins = links(Packs.find(pack, "-pin-tables.pdf"));
        List<Found> cuts = links(Packs.find(pack, "-wire-list.pdf"));
        for (Wire wire : harness.wires().all()) {
            String id = wire.id().value();
            assertTrue(
                    pins.stream()
                            .anyMatch(link ->
                                    link.place().equals(id) && link.file().endsWith("-wire-list.pdf")),
                    id);
        }
        for (Connector connector : harness.connectors().all()) {
            String id = connector.id().value();
            assertTrue(
                    pins.stream()
                            .anyMatch(link ->
                                    link.place().equals(id) && link.file().endsWith("-drawing.pdf")),
                    id + " from its pin table to the drawing");
            assertTrue(
                    cuts.stream()
                            .anyMatch(link ->
                                    link.place().equals(id) && link.file().endsWith("-pin-tables.pdf")),
                    id + " from the cut list to its pin table");
        }
    }

    @Test
    void aLinkLiesOnTheNameItLeadsFrom() throws IOException {
        Path pdf = Packs.find(Packs.written("teaching"), "-pin-tables.pdf");
        int checked = 0;
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            for (Found link : links(pdf)) {
                if (!link.file().endsWith("-wire-list.pdf")) {
                    continue;
                }
                PDPage page = document.getPage(link.page());
                PDRectangle at = link.at();
                PDFTextStripperByArea area = new PDFTextStripperByArea();
                area.addRegion(
                        "link",
                        new Rectangle2D.Double(
                                at.getLowerLeftX(),
                                page.getMediaBox().getHeight() - at.getUpperRightY(),
                                at.getWidth(),
                                at.getHeight()));
                area.extractRegions(page);
                assertEquals(link.place(), area.getTextForRegion("link").strip());
                checked++;
            }
        }
        assertTrue(checked > 0);
    }

    @Test
    void theOutlineOfTheDrawingListsItsSheetsWithTheirConnectorsAndPagesAreCalledSheets() throws IOException {
        Path pdf = Packs.find(Packs.written("teaching"), "-drawing.pdf");
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            List<String> titles = new ArrayList<>();
            for (PDOutlineItem sheet :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                titles.add(sheet.getTitle());
                sheet.children().forEach(inner -> titles.add(inner.getTitle()));
            }
            assertTrue(titles.contains("Sheet 1"), titles.toString());
            for (Connector connector :
                    Packs.analysis("teaching").harness().connectors().all()) {
                assertTrue(titles.contains(connector.id() + "  " + connector.name()), titles.toString());
            }
            var labels = document.getDocumentCatalog().getPageLabels();
            assertNotNull(labels);
            assertEquals("Sheet 1", labels.getLabelsByPageIndices()[0]);
        }
    }

    @Test
    void aPackOfOneDocumentHasNoLinksToOthers(@org.junit.jupiter.api.io.TempDir Path folder)
            throws IOException, PackException {
        PackOptions one = PackOptions.ALL.withDocuments("pin-tables");
        BuildPack.write(Packs.analysis("teaching"), folder, one, Progress.NONE);
        Path pdf = Packs.find(folder, "-pin-tables.pdf");
        assertTrue(links(pdf).stream()
                .allMatch(link -> link.file().equals(pdf.getFileName().toString())));
    }
}
