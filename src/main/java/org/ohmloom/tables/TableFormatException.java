package org.ohmloom.tables;

import java.util.List;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;
import org.ohmloom.words.Worded;

/**
 * Says in one line what is wrong with a table file: file, line, column, what is wrong and what would be right.
 *
 * <p>It is a message to the person who wrote the file and carries no stack trace.
 */
public final class TableFormatException extends RuntimeException implements Worded {
    private static final long serialVersionUID = 1L;

    private final transient Text words;

    private final String fileName;
    private final int line;
    private final String column;

    /**
     * @param fileName the file as the person knows it
     * @param line     the line, from 1; 0 when the whole file is meant
     * @param column   the column's name or the head key; blank when the whole line is meant
     * @param problem  what is wrong and what would be right
     */
    public TableFormatException(String fileName, int line, String column, Text problem) {
        this(Text.joined(": ", List.of(place(fileName, line, column), problem)), fileName, line, column);
    }

    private TableFormatException(Text words, String fileName, int line, String column) {
        super(words.english(), null, false, false);
        this.words = words;
        this.fileName = fileName;
        this.line = line;
        this.column = column;
    }

    private static Text place(String fileName, int line, String column) {
        Text row = line > 0 ? Refusals.text("%s, line %s", fileName, line) : Text.of(fileName);
        return column.isBlank() ? row : Refusals.text("%s, column %s", row, column);
    }

    /** What it says; in English once it was sent elsewhere, where texts do not go. */
    @Override
    public Text words() {
        return words == null ? Text.of(getMessage()) : words;
    }

    /** The file that is wrong. */
    public String fileName() {
        return fileName;
    }

    /** The line, from 1; 0 when the whole file is meant. */
    public int line() {
        return line;
    }

    /** The column's name; blank when the whole line or file is meant. */
    public String column() {
        return column;
    }
}
