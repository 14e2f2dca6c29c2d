package org.ohmloom.workbench.desk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.HarnessText;

/** The harnesses that come with the program. All are invented. */
public final class Examples {

    /**
     * One example.
     *
     * @param name  name of its file without the ending
     * @param title what people call it
     * @param about what it shows
     */
    public record Example(String name, String title, String about) {}

    /** The examples, the simplest first. */
    public static final List<Example> ALL = List.of(
            new Example("teaching", "Teaching harness", "Two loads, every number worked by hand in its notes"),
            new Example("star-ground", "Star ground", "One ground point, nothing to complain about"),
            new Example("rescue-pickup", "Rescue pickup", "12 V, fans and pumps at a duty cycle, sensors, data bus"),
            new Example("workboat", "Workboat console", "24 V, two-wire returns, small-craft rules"),
            new Example("faults", "Deliberate faults", "One of every mistake the review looks for"));

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
                throw new HarnessFileException(shown, "this example is not with the program");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Document.unsaved(HarnessText.read(text, shown), name);
        } catch (IOException unreadable) {
            throw new HarnessFileException(shown, "this example cannot be read");
        }
    }
}
