package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.ohmloom.model.Harness;

/**
 * The text of a harness file. Writing is canonical: one harness has one text, and a text once written is read and written
 * again without a changed byte.
 */
public final class HarnessText {
    private static final int SECTION_LEVELS = 2;

    private HarnessText() {}

    /**
     * Reads a harness.
     *
     * @param text the text of a harness file
     * @param path the file as messages name it
     * @throws HarnessFileException when the text is not a harness, with the place and what would be right
     */
    public static Harness read(String text, Path path) throws HarnessFileException {
        return read(text, path, Migrations.STEPS);
    }

    /** Writes a harness, lines ended by line feeds, the last one too. */
    public static String write(Harness harness) {
        return write(harness, Migrations.STEPS);
    }

    static Harness read(String text, Path path, Migrations migrations) throws HarnessFileException {
        if (text.isBlank()) {
            throw new HarnessFileException(path, "the file is empty; a harness file holds one JSON object");
        }
        JsonNode node;
        try {
            node = JsonParsing.parse(text);
        } catch (SyntaxException broken) {
            throw new HarnessFileException(path, broken.place(), ":" + broken.place(), broken.problem());
        }
        try {
            return new HarnessForm(migrations).read(node);
        } catch (RefusedException refused) {
            Spot spot = refused.spot();
            throw new HarnessFileException(path, spot.path(), ": " + spot.described(), refused.problem());
        }
    }

    static String write(Harness harness, Migrations migrations) {
        return JsonLayout.lines(new HarnessForm(migrations).write(harness), SECTION_LEVELS);
    }
}
