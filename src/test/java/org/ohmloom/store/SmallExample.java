package org.ohmloom.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The page on the file format and the complete file in it. */
final class SmallExample {
    static final Path PAGE = Path.of("src/docs/file-format.md");

    private SmallExample() {}

    static String page() {
        try {
            return Files.readString(PAGE);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** The text between the fences of the page. */
    static String text() {
        String page = page();
        int start = page.indexOf("```json\n") + "```json\n".length();
        return page.substring(start, page.indexOf("```", start));
    }

    /** The text with one piece, which must be there once, replaced by another. */
    static String with(String piece, String other) {
        String text = text();
        int at = text.indexOf(piece);
        if (at < 0 || text.indexOf(piece, at + 1) >= 0) {
            throw new IllegalArgumentException("not there exactly once: " + piece);
        }
        return text.replace(piece, other);
    }
}
