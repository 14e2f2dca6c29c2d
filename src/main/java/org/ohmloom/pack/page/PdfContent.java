package org.ohmloom.pack.page;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.draw.Scene;

/**
 * What a PDF holds.
 *
 * @param pages     pages in order, at least one
 * @param bookmarks outline; may be empty
 * @param places    places by the name that links lead to them with
 * @param links     what leads elsewhere
 */
public record PdfContent(
        List<Scene> pages, List<Bookmark> bookmarks, SortedMap<String, Place> places, List<Link> links) {

    /**
     * A place in the file.
     *
     * @param page the page, from 0
     * @param yMm  how far down, mm
     */
    public record Place(int page, double yMm) {}

    public PdfContent {
        pages = List.copyOf(pages);
        bookmarks = List.copyOf(bookmarks);
        places = Collections.unmodifiableSortedMap(new TreeMap<>(places));
        links = List.copyOf(links);
    }

    /** Pages with an outline, without links. */
    public static PdfContent of(List<Scene> pages, List<Bookmark> bookmarks) {
        return new PdfContent(pages, bookmarks, new TreeMap<>(), List.of());
    }
}
