package org.ohmloom.manual;

import java.util.List;
import org.commonmark.node.Node;

/**
 * One page of the manual.
 *
 * @param id       its file below the manual's folder without {@code .md}, as {@code views/layout}
 * @param title    its first heading
 * @param markdown its text as it stands in the file
 * @param links    what it links to, in order
 */
public record Page(String id, String title, String markdown, List<PageLink> links) {

    public Page {
        links = List.copyOf(links);
    }

    /** Reads a page. */
    static Page of(String id, String markdown) {
        Node read = Markdown.read(markdown);
        return new Page(id, Markdown.title(read), markdown, Markdown.links(id, read));
    }

    /** The folder it lies in, as {@code views}; empty for those on top. */
    public String folder() {
        int slash = id.lastIndexOf('/');
        return slash < 0 ? "" : id.substring(0, slash);
    }

    /** Its text without marks, paragraphs divided by a line's end. */
    public String plainText() {
        return Markdown.plainText(Markdown.read(markdown));
    }
}
