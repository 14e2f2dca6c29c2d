package org.ohmloom.pack.page;

import java.util.List;

/**
 * An entry of the outline of a PDF.
 *
 * @param title what it says
 * @param page  page it leads to, from 0
 * @param inner entries below it
 */
public record Bookmark(String title, int page, List<Bookmark> inner) {
    public Bookmark {
        inner = List.copyOf(inner);
    }

    /** An entry with none below it. */
    public Bookmark(String title, int page) {
        this(title, page, List.of());
    }
}
