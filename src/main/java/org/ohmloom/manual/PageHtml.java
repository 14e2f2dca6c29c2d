package org.ohmloom.manual;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.renderer.html.HtmlRenderer;

/** Turns a page into the plain HTML that text components show. */
public final class PageHtml {

    /** Stands before the id of a page in a link. */
    public static final String PAGE = "page:";

    private PageHtml() {}

    /**
     * The body of a page.
     *
     * @param pictures attributes of a picture by its file below the manual's folder: {@code src}, {@code width}, {@code height}
     */
    public static String body(Page page, Function<String, Map<String, String>> pictures) {
        HtmlRenderer renderer = HtmlRenderer.builder()
                .extensions(List.of(TablesExtension.create()))
                .attributeProviderFactory(context -> (node, tag, attributes) -> adapt(page, node, attributes, pictures))
                .build();
        // Text components know neither of these two, and no text of a page can hold them: its own are written as
        // entities.
        return renderer.render(Markdown.read(page.markdown())).replaceAll("</?t(head|body)>", "");
    }

    private static void adapt(
            Page page, Node node, Map<String, String> attributes, Function<String, Map<String, String>> pictures) {
        if (node instanceof Link link) {
            new PageLink(link.getDestination(), page.id(), false)
                    .page()
                    .ifPresent(target -> attributes.put("href", PAGE + target));
        } else if (node instanceof Image image) {
            new PageLink(image.getDestination(), page.id(), true)
                    .pictureFile()
                    .ifPresent(file -> attributes.putAll(pictures.apply(file)));
        }
    }
}
