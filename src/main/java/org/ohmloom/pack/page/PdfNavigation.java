package org.ohmloom.pack.page;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDestinationNameTreeNode;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.filespecification.PDSimpleFileSpecification;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionRemoteGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDBorderStyleDictionary;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDNamedDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitWidthDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.ohmloom.draw.Extent;

/** What helps to find one's way in a PDF: outline, page labels, named places, and links within the file and to files beside it. */
final class PdfNavigation {
    private static final String LABEL = "Sheet ";

    /** Room left above a place that is gone to, mm. */
    private static final double ABOVE_MM = 4;

    private final PDDocument document;

    PdfNavigation(PDDocument document) {
        this.document = document;
    }

    void put(PdfContent content) throws IOException {
        label();
        if (!content.bookmarks().isEmpty()) {
            PDDocumentOutline outline = new PDDocumentOutline();
            outline(outline, content.bookmarks());
            document.getDocumentCatalog().setDocumentOutline(outline);
        }
        places(content.places());
        links(content.links());
    }

    /** The pages are called as their title blocks call them. */
    private void label() {
        PDPageLabelRange range = new PDPageLabelRange();
        range.setStyle(PDPageLabelRange.STYLE_DECIMAL);
        range.setPrefix(LABEL);
        range.setStart(1);
        PDPageLabels labels = new PDPageLabels(document);
        labels.setLabelItem(0, range);
        document.getDocumentCatalog().setPageLabels(labels);
    }

    private void outline(PDOutlineNode node, List<Bookmark> bookmarks) {
        for (Bookmark bookmark : bookmarks) {
            PDPageFitDestination target = new PDPageFitDestination();
            target.setPage(document.getPage(bookmark.page()));
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(bookmark.title());
            item.setDestination(target);
            node.addLast(item);
            outline(item, bookmark.inner());
        }
    }

    private void places(Map<String, PdfContent.Place> places) {
        if (places.isEmpty()) {
            return;
        }
        Map<String, PDPageDestination> destinations = new HashMap<>();
        places.forEach((name, place) -> {
            PDPage page = document.getPage(place.page());
            PDPageFitWidthDestination target = new PDPageFitWidthDestination();
            target.setPage(page);
            target.setTop(Math.round(up(page, Math.max(0, place.yMm() - ABOVE_MM))));
            destinations.put(name, target);
        });
        PDDestinationNameTreeNode tree = new PDDestinationNameTreeNode();
        tree.setNames(destinations);
        PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
        names.setDests(tree);
        document.getDocumentCatalog().setNames(names);
    }

    private void links(List<Link> links) throws IOException {
        for (Link link : links) {
            PDPage page = document.getPage(link.page());
            List<PDAnnotation> annotations = page.getAnnotations();
            annotations.add(annotation(link, page));
            page.setAnnotations(annotations);
        }
    }

    private static PDAnnotationLink annotation(Link link, PDPage page) {
        PDAnnotationLink annotation = new PDAnnotationLink();
        annotation.setRectangle(rectangle(link.extent(), page));
        PDBorderStyleDictionary border = new PDBorderStyleDictionary();
        border.setWidth(0);
        annotation.setBorderStyle(border);
        if (link.file().isPresent()) {
            PDActionRemoteGoTo action = new PDActionRemoteGoTo();
            action.setFile(
                    new PDSimpleFileSpecification(new COSString(link.file().get())));
            action.setD(new COSString(link.place()));
            annotation.setAction(action);
        } else {
            annotation.setDestination(new PDNamedDestination(link.place()));
        }
        return annotation;
    }

    private static PDRectangle rectangle(Extent extent, PDPage page) {
        float left = points(extent.leftMm());
        float bottom = up(page, extent.bottomMm());
        return new PDRectangle(left, bottom, points(extent.widthMm()), points(extent.heightMm()));
    }

    /** Points from the lower edge of a place so far down, mm. */
    private static float up(PDPage page, double yMm) {
        return page.getMediaBox().getHeight() - points(yMm);
    }

    private static float points(double mm) {
        return (float) (mm * PdfFile.POINTS_PER_MM);
    }
}
