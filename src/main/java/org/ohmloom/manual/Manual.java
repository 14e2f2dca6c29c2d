package org.ohmloom.manual;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * All pages that can be reached from the first one, and the contents made of them: the first page lists the chapters, a
 * chapter lists the pages in its own folder.
 */
public final class Manual {

    /** The first page. */
    public static final String HOME = "README";

    private final Map<String, Page> pages = new LinkedHashMap<>();
    private final List<PageLink> dead = new ArrayList<>();

    private Manual() {}

    /** The manual that comes with the program. */
    public static Manual bundled() {
        return read(Manual::bundledText);
    }

    /**
     * Reads a manual.
     *
     * @param texts the Markdown of a page, by its id; empty where there is no such page
     */
    public static Manual read(Function<String, Optional<String>> texts) {
        Manual manual = new Manual();
        Deque<String> ahead = new ArrayDeque<>(List.of(HOME));
        Set<String> seen = new LinkedHashSet<>(ahead);
        while (!ahead.isEmpty()) {
            String id = ahead.remove();
            Page page = Page.of(id, texts.apply(id).orElseThrow());
            manual.pages.put(id, page);
            for (PageLink link : page.links()) {
                link.page().ifPresent(target -> {
                    if (texts.apply(target).isEmpty()) {
                        manual.dead.add(link);
                    } else if (seen.add(target)) {
                        ahead.add(target);
                    }
                });
            }
        }
        return manual;
    }

    /** One page of the manual that comes with the program, without reading the others; empty when there is none. */
    public static Optional<Page> bundledPage(String id) {
        return bundledText(id).map(text -> Page.of(id, text));
    }

    /** Where a picture of the manual lies; empty when it does not come with the program. */
    public static Optional<URL> bundledPicture(String file) {
        return Optional.ofNullable(Manual.class.getResource(file));
    }

    /** Every page that can be reached. */
    public List<Page> pages() {
        return List.copyOf(pages.values());
    }

    public Optional<Page> find(String id) {
        return Optional.ofNullable(pages.get(id));
    }

    /** Links to pages that are not there. */
    public List<PageLink> deadLinks() {
        return List.copyOf(dead);
    }

    /** The contents. */
    public List<Chapter> chapters() {
        List<Chapter> chapters = new ArrayList<>();
        Set<String> placed = new LinkedHashSet<>(List.of(HOME));
        for (Page chapter : linked(pages.get(HOME), placed)) {
            boolean hasFolder = chapter.id().endsWith("/" + HOME);
            List<Page> below = hasFolder
                    ? linked(chapter, placed).stream()
                            .filter(page -> page.folder().equals(chapter.folder()))
                            .toList()
                    : List.of();
            chapters.add(new Chapter(chapter, below));
        }
        return chapters;
    }

    /** The pages a page links to in its order, each once and none that has its place already. */
    private List<Page> linked(Page page, Set<String> placed) {
        return page.links().stream()
                .flatMap(link -> link.page().stream())
                .filter(pages::containsKey)
                .filter(id -> !placed.contains(id))
                .distinct()
                .map(pages::get)
                .toList();
    }

    private static Optional<String> bundledText(String id) {
        try (InputStream in = Manual.class.getResourceAsStream(id + ".md")) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
