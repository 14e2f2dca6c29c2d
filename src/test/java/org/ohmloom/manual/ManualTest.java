package org.ohmloom.manual;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The pages hang together: every link leads somewhere, every page can be reached, and each is found by what it says. */
class ManualTest {

    private static final Path PAGES = Path.of("src/main/resources/org/ohmloom/manual");

    private final Manual manual = Manual.bundled();

    @Test
    void noLinkIsDead() {
        assertEquals(List.of(), manual.deadLinks());
        List<PageLink> noPictures = manual.pages().stream()
                .flatMap(page -> page.links().stream())
                .filter(link -> link.pictureFile().isPresent()
                        && Manual.bundledPicture(link.pictureFile().get()).isEmpty())
                .toList();
        assertEquals(List.of(), noPictures);
    }

    @Test
    void everyLinkIsToAPageOrAPictureOfTheManual() {
        assertEquals(
                List.of(),
                manual.pages().stream()
                        .flatMap(page -> page.links().stream())
                        .filter(link ->
                                link.page().isEmpty() && link.pictureFile().isEmpty())
                        .toList());
    }

    @Test
    void everyPageInTheRepositoryCanBeReachedFromTheFirst() throws IOException {
        assertEquals(files(), manual.pages().stream().map(Page::id).collect(Collectors.toCollection(TreeSet::new)));
    }

    @Test
    void everyPageStandsInTheContentsOnce() throws IOException {
        List<String> placed = manual.chapters().stream()
                .flatMap(chapter -> Stream.concat(Stream.of(chapter.page()), chapter.below().stream()))
                .map(Page::id)
                .toList();
        Set<String> expected = files();
        expected.remove(Manual.HOME);
        assertEquals(expected, new TreeSet<>(placed));
        assertEquals(placed.size(), Set.copyOf(placed).size());
    }

    @Test
    void everyPageHasATitleOfItsOwnInItsFolder() {
        Map<String, Long> titles = manual.pages().stream()
                .collect(Collectors.groupingBy(page -> page.folder() + ": " + page.title(), Collectors.counting()));
        titles.forEach((title, count) -> assertEquals(1, count, title));
    }

    @Test
    void linksToPagesThatAreNotThereAreTold() {
        Manual broken = Manual.read(id -> Optional.ofNullable(Map.of(
                        Manual.HOME,
                        "# Home\n\n[A](a/one.md) and [B](a/two.md)",
                        "a/one",
                        "# One\n\n[back](../README.md)")
                .get(id)));
        assertEquals(
                List.of("a/two"),
                broken.deadLinks().stream()
                        .map(link -> link.page().orElseThrow())
                        .toList());
        assertEquals(2, broken.pages().size());
    }

    @Test
    void theTitleIsTheFirstHeadingAndTextLosesItsMarks() {
        Page page = Page.of(
                "a/b",
                "# The *first* `heading`\n\nSome **bold** words\nand more.\n\n| a | b |\n|---|---|\n| c | d |\n");
        assertEquals("The first heading", page.title());
        assertEquals("The first heading\nSome bold words and more.\na\nb\nc\nd\n\n", page.plainText());
        assertEquals("a", page.folder());
    }

    @Test
    void htmlHasLinksByPageAndNoTagsThatTextComponentsDoNotKnow() {
        Page page = Page.of("a/b", "# T\n\n[c](../d/c.md) ![p](../pictures/p.png) <b>x</b>\n\n| h |\n|---|\n| v |\n");
        String html = PageHtml.body(page, file -> Map.of("src", "at " + file));
        assertTrue(html.contains("href=\"page:d/c\""), html);
        assertTrue(html.contains("src=\"at pictures/p.png\""), html);
        assertFalse(html.contains("<thead>") || html.contains("<tbody>"), html);
    }

    private static Set<String> files() throws IOException {
        try (Stream<Path> files = Files.walk(PAGES)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .map(file ->
                            PAGES.relativize(file).toString().replace('\\', '/').replaceFirst("\\.md$", ""))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
