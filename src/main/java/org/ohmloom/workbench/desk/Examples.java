package org.ohmloom.workbench.desk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.HarnessText;
import org.ohmloom.workbench.words.Words;

/** The harnesses that come with the program. All are invented. */
public final class Examples {
    private static final Words WORDS = Words.of("desk");
    /**
     * One example.
     *
     * @param name name of its file without the ending
     */
    public record Example(String name) {

        /** What people call it. */
        public String title() {
            return WORDS.get("example." + name);
        }

        /** What it shows. */
        public String about() {
            return WORDS.get("example." + name + ".about");
        }
    }

    /** The examples, the simplest first. */
    public static final List<Example> ALL = List.of(
            new Example("teaching"),
            new Example("star-ground"),
            new Example("rescue-pickup"),
            new Example("workboat"),
            new Example("faults"));

    private Examples() {}

    /**
     * Opens an example as a document without a file, so that saving asks where.
     *
     * @throws HarnessFileException when it is not with the program
     */
    public static Document open(String name) throws HarnessFileException {
        String resource = "examples/" + name + HarnessFiles.ENDING;
        Path shown = Path.of(resource);
        try (InputStream in = Examples.class.getClassLoader().getResourceAsStream(resource)) {
            if (in == null) {
                throw new HarnessFileException(shown, WORDS.text("examples.this-example-is-not"));
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Document.unsaved(HarnessText.read(text, shown), name);
        } catch (IOException unreadable) {
            throw new HarnessFileException(shown, WORDS.text("examples.this-example-cannot-be"));
        }
    }
}
