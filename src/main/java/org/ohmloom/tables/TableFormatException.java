package org.ohmloom.tables;

/**
 * Says in one line what is wrong with a table file: file, line, column, what is wrong and what would be right.
 *
 * <p>It is a message to the person who wrote the file and carries no stack trace.
 */
public final class TableFormatException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String fileName;
    private final int line;
    private final String column;

    /**
     * @param fileName the file as the person knows it
     * @param line     the line, from 1; 0 when the whole file is meant
     * @param column   the column's name or the head key; blank when the whole line is meant
     * @param problem  what is wrong
     * @param remedy   what would be right
     */
    public TableFormatException(String fileName, int line, String column, String problem, String remedy) {
        super(place(fileName, line, column) + ": " + problem + "; " + remedy, null, false, false);
        this.fileName = fileName;
        this.line = line;
        this.column = column;
    }

    private static String place(String fileName, int line, String column) {
        return fileName + (line > 0 ? ", line " + line : "") + (column.isBlank() ? "" : ", column " + column);
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
