package org.ohmloom.manual;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * All pages that can be reached from the first one, and the contents made of them: the first page lists the chapters, a
 * chapter lists the pages in its own folder.
 */
public final class Manual {

    /** The first page. */
    public static final String HOME = "README";

    private final Map<String, Page> pages;

    private Manual(Map<String, Page> pages) {
        this.pages = pages;
    }

    /** The manual that comes with the program. */
    public static Manual bundled() {
        return bundled(Locale.ROOT);
    }

    /** The same in a language: each page as that language has it, in English where it has none. */
    public static Manual bundled(Locale language) {
        return read(id -> bundledText(language, id));
    }

    /**
     * Reads a manual, every page once.
     *
     * @param texts the Markdown of a page, by its id; empty where there is no such page
     * @throws IllegalArgumentException without a first page
     */
    public static Manual read(Function<String, Optional<String>> texts) {
        Map<String, Page> pages = new LinkedHashMap<>();
        Deque<String> ahead = new ArrayDeque<>(List.of(HOME));
        Set<String> seen = new HashSet<>(ahead);
        while (!ahead.isEmpty()) {
            String id = ahead.remove();
            texts.apply(id).map(text -> Page.of(id, text)).ifPresent(page -> {
                pages.put(id, page);
                targets(page).filter(seen::add).forEach(ahead::add);
            });
        }
        if (!pages.containsKey(HOME)) {
            throw new IllegalArgumentException("the manual has no page '" + HOME + "'");
        }
        return new Manual(pages);
    }

    private static Stream<String> targets(Page page) {
        return page.links().stream().flatMap(link -> link.page().stream());
    }

    /** One page of the manual that comes with the program, without reading the others; empty when there is none. */
    public static Optional<Page> bundledPage(String id) {
        return bundledPage(Locale.ROOT, id);
    }

    /** The same in a language, in English where it has none. */
    public static Optional<Page> bundledPage(Locale language, String id) {
        return bundledText(language, id).map(text -> Page.of(id, text));
    }

    /** Where a picture of the manual lies; empty when it does not come with the program. */
    public static Optional<URL> bundledPicture(String file) {
        return bundledPicture(Locale.ROOT, file);
    }

    /** The same in a language, in English where it has none. */
    public static Optional<URL> bundledPicture(Locale language, String file) {
        return LanguageFolders.places(language, file)
                .flatMap(place -> Stream.ofNullable(Manual.class.getResource(place)))
                .findFirst();
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
        return pages.values().stream()
                .flatMap(page -> page.links().stream())
                .filter(link -> !link.page().map(pages::containsKey).orElse(true))
                .toList();
    }

    /** The contents. */
    public List<Chapter> chapters() {
        List<Chapter> chapters = new ArrayList<>();
        for (Page chapter : linked(pages.get(HOME))) {
            boolean hasFolder = chapter.id().endsWith("/" + HOME);
            List<Page> below = hasFolder
                    ? linked(chapter).stream()
                            .filter(page -> page.folder().equals(chapter.folder()))
                            .toList()
                    : List.of();
            chapters.add(new Chapter(chapter, below));
        }
        return chapters;
    }

    /** The pages a page links to in its order, each once and without itself. */
    private List<Page> linked(Page page) {
        return targets(page)
                .filter(pages::containsKey)
                .filter(id -> !id.equals(page.id()))
                .distinct()
                .map(pages::get)
                .toList();
    }

    private static Optional<String> bundledText(Locale language, String id) {
        return LanguageFolders.places(language, id)
                .flatMap(place -> bundledText(place).stream())
                .findFirst();
    }

    private static Optional<String> bundledText(String id) {
        try (InputStream in = Manual.class.getResourceAsStream(id + ".md")) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
