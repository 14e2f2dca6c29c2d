package org.ohmloom.store;

import java.nio.file.Path;
import java.util.regex.Pattern;

/** Thrown when a harness file cannot be read or written; its message is one line for the person who asked for it. */
public class HarnessFileException extends Exception {
    private static final long serialVersionUID = 1L;
    private static final Pattern CONTROLS = Pattern.compile("[\\p{Cc}\\u2028\\u2029]+");

    private final transient Path path;
    private final String place;
    private final String problem;

    /**
     * A problem with the file as a whole.
     *
     * @param path    the file, as it was named
     * @param problem what is wrong and what would be right
     */
    public HarnessFileException(Path path, String problem) {
        this(path, "", "", problem);
    }

    /** A problem at a place; {@code shown} is the place as the message tells it, with the colon or blank before it. */
    HarnessFileException(Path path, String place, String shown, String problem) {
        super(CONTROLS.matcher(path + shown + ": " + problem).replaceAll(" "));
        this.path = path;
        this.place = place;
        this.problem = CONTROLS.matcher(problem).replaceAll(" ");
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
        return problem;
    }
}
