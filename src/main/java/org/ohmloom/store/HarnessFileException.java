package org.ohmloom.store;

import java.nio.file.Path;
import java.util.List;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;
import org.ohmloom.words.WordedException;

/** Thrown when a harness file cannot be read or written; its message is one line for the person who asked for it. */
public class HarnessFileException extends WordedException {
    private static final long serialVersionUID = 1L;

    private final transient Path path;
    private final String place;
    private final transient Text problem;

    /**
     * A problem with the file as a whole.
     *
     * @param path     the file, as it was named
     * @param template what is wrong and what would be right, as {@link Refusals#text} takes it
     */
    HarnessFileException(Path path, String template, Object... values) {
        this(path, Refusals.text(template, values));
    }

    /** The same. */
    public HarnessFileException(Path path, Text problem) {
        this(path, "", "", problem);
    }

    /** A problem at a place; {@code shown} is the place as the message tells it, with the colon or blank before it. */
    HarnessFileException(Path path, String place, String shown, Text problem) {
        super(new OneLine(Text.joined(": ", List.of(Text.of(path + shown), problem))), null);
        this.path = path;
        this.place = place;
        this.problem = new OneLine(problem);
    }

    /** The file, as it was named. */
    public Path path() {
        return path;
    }

    /**
     * Where in the file: a JSON path such as {@code $.wires[3].lengthMetres}, {@code line:column} when the text is not
     * JSON, or empty when the file as a whole is meant.
     */
    public String place() {
        return place;
    }

    /** What is wrong there and what would be right. */
    public String problem() {
        return problem.english();
    }
}
